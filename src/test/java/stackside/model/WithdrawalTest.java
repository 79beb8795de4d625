package stackside.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How a record is withdrawn in its own row. */
final class WithdrawalTest {

  @Test
  void dayInitialsAndReason() {
    assertThat(Withdrawal.parse(" 2026-03-01 AB: misread; it was slot 4: see below "))
        .isEqualTo(
            new Withdrawal(
                LocalDate.of(2026, 3, 1), new Initials("AB"), "misread; it was slot 4: see below"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "yes",
        "misread",
        "2026-03-01: misread",
        "2026-03-01 AB",
        "2026-03-01 AB:",
        "2026-02-30 AB: misread",
        "01.03.2026 AB: misread",
        "2026-03-01 Alexandra: misread"
      })
  void whatLacksOneOfThem_isRefused(String text) {
    assertThatThrownBy(() -> Withdrawal.parse(text)).isInstanceOf(UnreadableText.class);
  }
}
