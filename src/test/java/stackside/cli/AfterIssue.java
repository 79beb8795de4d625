package stackside.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import stackside.content.Reading;
import stackside.derive.Analysis;
import stackside.derive.edition.Register;
import stackside.derive.signed.Approvals;
import stackside.publish.LocalDisk;
import stackside.source.Problem;

/** Lets tests of other packages compare content with a register as {@code check} does. */
public final class AfterIssue {
  private AfterIssue() {}

  /** What was signed of the demonstration. */
  public static Approvals approvals() {
    try {
      return ApprovalFiles.in(new LocalDisk(), Path.of("content")).read().approvals();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What was found, and what the register misses or finds altered. */
  public static List<Problem> problems(
      Reading reading,
      Optional<Analysis> analysis,
      List<Problem> found,
      Approvals approvals,
      Register register) {
    CheckedContent judged =
        new CheckedContent(
                reading.sources(),
                analysis,
                approvals,
                Optional.empty(),
                reading.records(),
                reading.problems())
            .with(found);
    return new LastIssue(register, Path.of("site")).compared(judged).problems();
  }
}
