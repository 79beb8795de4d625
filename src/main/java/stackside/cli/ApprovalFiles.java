package stackside.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
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
import stackside.derive.signed.SignedFacts;
import stackside.publish.Disk;
import stackside.publish.SafeFile;
import stackside.source.Location;
import stackside.source.Problem;
import stackside.source.SizeLimit;
import stackside.source.Utf8;

/** The ledger and the kept copies of what was signed, as they lie in a content folder. */
final class ApprovalFiles {
  private static final String KEPT = "approved";
  private static final String ENDING = ".json";
  private static final String NOT_UTF_8 = "the ledger is not in UTF-8";

  private final Disk disk;
  private final Path content;

  ApprovalFiles(Disk disk, Path content) {
    this.disk = disk;
    this.content = content;
  }

  /** The approvals as read, with all that is wrong with the ledger's text. */
  record Read(Approvals approvals, List<Problem> problems) {
    Ledger.Read ledger() {
      return new Ledger.Read(approvals.ledger(), problems);
    }
  }

  Read read() throws IOException {
    Ledger.Read ledger = ledger(content.resolve(Ledger.FILE));
    return new Read(new Approvals(ledger.ledger(), kept()), ledger.problems());
  }

  /** A ledger anywhere; an absent one is empty. */
  Ledger.Read ledger(Path file) throws IOException {
    if (disk.at(file) != Disk.Entry.FILE) {
      return new Ledger.Read(Ledger.empty(), List.of());
    }
    return disk.read(file, SizeLimit.WRITTEN)
        .map(ApprovalFiles::decoded)
        .orElseGet(() -> unreadable("the ledger is " + SizeLimit.WRITTEN.exceeded()));
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

  /** Copies that are not as they were signed do not count as kept. */
  private SortedMap<String, Json.Members> kept() throws IOException {
    SortedMap<String, Json.Members> kept = new TreeMap<>();
    Path folder = content.resolve(KEPT);
    if (disk.at(folder) == Disk.Entry.FOLDER) {
      for (Path file : disk.list(folder)) {
        String name = String.valueOf(file.getFileName());
        if (name.endsWith(ENDING) && disk.at(file) == Disk.Entry.FILE) {
          String fingerprint = name.substring(0, name.length() - ENDING.length());
          disk.read(file, SizeLimit.WRITTEN)
              .flatMap(bytes -> copy(bytes, fingerprint))
              .ifPresent(json -> kept.put(fingerprint, json));
        }
      }
    }
    return kept;
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

  /** Keeps a copy of what is being signed; the copies come before the line that names them. */
  void keep(SignedFacts facts) throws IOException {
    Path file = content.resolve(KEPT).resolve(facts.fingerprint() + ENDING);
    if (disk.at(content.resolve(KEPT)) == Disk.Entry.ABSENT) {
      disk.createFolder(content.resolve(KEPT));
    }
    if (disk.at(file) == Disk.Entry.ABSENT || !isKept(facts, file)) {
      try (SafeFile copy = SafeFile.hold(disk, file)) {
        copy.replace(CanonicalJson.bytes(facts.json()));
      }
    }
  }

  private boolean isKept(SignedFacts facts, Path file) throws IOException {
    return disk.read(file, SizeLimit.WRITTEN)
        .map(Fingerprint::of)
        .filter(facts.fingerprint()::equals)
        .isPresent();
  }

  /** The ledger's file, held by this run alone. */
  SafeFile holdLedger() throws IOException {
    return SafeFile.hold(disk, content.resolve(Ledger.FILE));
  }
}
