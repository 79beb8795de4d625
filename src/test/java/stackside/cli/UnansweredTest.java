package stackside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import stackside.check.ContentRules;

final class UnansweredTest {

  /** What no profile could answer would hold its cards for ever, and an unknown id holds none. */
  @Test
  void everyWarningThatMayHurt_isAQuestionThatAProfileCanAnswer() {
    assertThat(ContentRules.questions()).containsAll(Unanswered.MAY_HURT);
  }
}
