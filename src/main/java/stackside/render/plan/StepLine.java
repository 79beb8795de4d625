package stackside.render.plan;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * One numbered step of a checklist or a drill.
 *
 * @param see what shows that the step is done
 */
public record StepLine(int number, Part part, Phrase action, Optional<Phrase> see) {

  /** The purpose of a step. */
  public enum Part {
    MAKE_SAFE,
    CHECK,
    ESCALATE,
    END
  }

  /** What to do, then what to see. */
  public Stream<Phrase> phrases() {
    return Stream.concat(Stream.of(action), see.stream());
  }
}
