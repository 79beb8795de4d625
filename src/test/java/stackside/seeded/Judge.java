package stackside.seeded;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stackside.check.ContentRules;
import stackside.cli.AfterIssue;
import stackside.content.ContentReader;
import stackside.content.Reading;
import stackside.derive.Analysis;
import stackside.derive.edition.Register;
import stackside.derive.signed.Approvals;
import stackside.model.Unit;
import stackside.source.Problem;

/** Reads and checks one edit after another, each within otherwise unchanged content. */
final class Judge implements AutoCloseable {
  private final FileSystem memory = Jimfs.newFileSystem(Configuration.unix());
  private final Path content = memory.getPath("/content");
  private final Lines clean;
  private final Approvals approvals;
  private final Register register;

  /** The result of reading and checking. */
  record Verdict(Optional<Unit> unit, List<Problem> problems) {}

  /** Checks against the ledger and the register of the last issue. */
  Judge(Lines clean, Approvals approvals, Register register) {
    this.clean = clean;
    this.approvals = approvals;
    this.register = register;
    for (Map.Entry<String, List<String>> file : clean.files().entrySet()) {
      write(file.getKey(), file.getValue());
    }
  }

  Verdict after(Edit edit) {
    write(edit.file(), edit.lines());
    try {
      return judge();
    } finally {
      write(edit.file(), clean.of(edit.file()));
    }
  }

  private Reading reading() {
    try {
      return ContentReader.read(content);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Verdict judge() {
    Reading reading = reading();
    Optional<Analysis> analysis = reading.unit().map(Analysis::of);
    List<Problem> found =
        analysis.map(each -> ContentRules.judge(each, ActedOn.DAY)).orElse(List.of());
    return new Verdict(
        reading.unit(), AfterIssue.problems(reading, analysis, found, approvals, register));
  }

  private void write(String file, List<String> lines) {
    try {
      Path path = content.resolve(file);
      Files.createDirectories(path.getParent());
      Files.write(path, lines);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    try {
      memory.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
