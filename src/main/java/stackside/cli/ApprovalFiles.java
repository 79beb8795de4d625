package stackside.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stackside.derive.signed.Approvals;
import stackside.derive.signed.CanonicalJson;
import stackside.derive.signed.Fingerprint;
import stackside.derive.signed.Json;
import stackside.derive.signed.JsonReader;
import stackside.derive.signed.Ledger;
import stackside.derive.signed.LedgerFaults;
import stackside.publish.Disk;
import stackside.publish.SafeFile;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.SizeLimit;
import stackside.source.Utf8;

/** The ledger and the kept copies of what its lines name, as they lie in a folder. */
final class ApprovalFiles {
  private static final String KEPT = "approved";
  private static final String ENDING = ".json";
  private static final String NOT_UTF_8 = "the ledger is not in UTF-8";

  private final Disk disk;
  private final Path ledger;
  private final Path kept;

  private ApprovalFiles(Disk disk, Path ledger) {
    this.disk = disk;
    this.ledger = ledger;
    this.kept = ledger.resolveSibling(KEPT);
  }

  /** Those of a content folder. */
  static ApprovalFiles in(Disk disk, Path content) {
    return new ApprovalFiles(disk, content.resolve(Ledger.FILE));
  }

  /** A ledger anywhere, with what is kept beside it. */
  static ApprovalFiles at(Disk disk, Path ledger) {
    return new ApprovalFiles(disk, ledger.toAbsolutePath());
  }

  /** The approvals as read, with all that is wrong with the ledger's text. */
  record Read(Approvals approvals, List<Problem> problems) {}

  /** An absent ledger is empty. */
  Read read() throws IOException {
    Ledger.Read read =
        disk.at(ledger) == Disk.Entry.FILE
            ? disk.read(ledger, SizeLimit.WRITTEN)
                .map(ApprovalFiles::decoded)
                .orElseGet(() -> unreadable("the ledger is " + SizeLimit.WRITTEN.exceeded()))
            : new Ledger.Read(Ledger.empty(), List.of());
    return new Read(new Approvals(read.ledger(), kept()), read.problems());
  }

  private static Ledger.Read decoded(byte[] bytes) {
    return Utf8.text(bytes)
        .filter(text -> text.indexOf('\0') < 0)
        .map(Ledger::read)
        .orElseGet(() -> unreadable(NOT_UTF_8));
  }

  private static Ledger.Read unreadable(String message) {
    Problem problem =
        LedgerFaults.ALTERED
            .at(Location.startOf(Ledger.FILE), message)
            .help("restore the ledger from a copy; signatures are only ever added, by 'approve'");
    return new Ledger.Read(Ledger.empty(), List.of(problem));
  }

  /** Copies that are not as they were kept do not count as kept. */
  private SortedMap<String, Json.Members> kept() throws IOException {
    SortedMap<String, Json.Members> copies = new TreeMap<>();
    if (disk.at(kept) == Disk.Entry.FOLDER) {
      for (Path file : disk.list(kept)) {
        String name = String.valueOf(file.getFileName());
        if (name.endsWith(ENDING) && disk.at(file) == Disk.Entry.FILE) {
          String fingerprint = name.substring(0, name.length() - ENDING.length());
          disk.read(file, SizeLimit.WRITTEN)
              .flatMap(bytes -> copy(bytes, fingerprint))
              .ifPresent(json -> copies.put(fingerprint, json));
        }
      }
    }
    return copies;
  }

  private static Optional<Json.Members> copy(byte[] bytes, String fingerprint) {
    if (!Fingerprint.of(bytes).text().equals(fingerprint)) {
      return Optional.empty();
    }
    try {
      return Optional.of(JsonReader.read(new String(bytes, StandardCharsets.UTF_8)))
          .filter(Json.Members.class::isInstance)
          .map(Json.Members.class::cast);
    } catch (JsonReader.Unreadable e) {
      return Optional.empty();
    }
  }

  /** The ledger's file, held by this run alone. */
  SafeFile hold() throws IOException {
    return SafeFile.hold(disk, ledger);
  }

  /**
   * Writes what is new: the copies first, then the ledger whose lines name them. Where that fails,
   * no copy stays that no line names.
   */
  void write(Approvals before, Approvals after, SafeFile held) throws IOException {
    if (before.equals(after)) {
      return;
    }
    List<Path> written = new ArrayList<>();
    try {
      if (disk.at(kept) == Disk.Entry.ABSENT) {
        disk.createFolder(kept);
        written.add(kept);
      }
      for (Map.Entry<String, Json.Members> copy : after.kept().entrySet()) {
        if (!before.kept().containsKey(copy.getKey())) {
          Path file = kept.resolve(copy.getKey() + ENDING);
          SafeFile.keep(disk, file, CanonicalJson.bytes(copy.getValue()));
          written.add(file);
        }
      }
      held.replace(after.ledger().text().getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      takeBack(written, after, e);
      throw e;
    }
  }

  private void takeBack(List<Path> written, Approvals after, IOException failure) {
    try {
      if (read().approvals().ledger().equals(after.ledger())) {
        return;
      }
      for (int i = written.size() - 1; i >= 0; i--) {
        disk.delete(written.get(i));
      }
    } catch (IOException e) {
      failure.addSuppressed(e);
    }
  }
}
