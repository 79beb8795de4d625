package stackside.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ContactHoursTest {

  @Test
  void runOfDays_mayPassTheWeekEnd() {
    ContactHours hours = ContactHours.parse("Saturday to Monday 08:00 to 17:00");
    assertThat(hours.stretches())
        .containsExactly(
            new ContactHours.Stretch(
                List.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY, DayOfWeek.MONDAY),
                LocalTime.of(8, 0),
                LocalTime.of(17, 0)));
  }

  @Test
  void severalStretches_areKeptInOrder() {
    ContactHours hours =
        ContactHours.parse("Monday to Friday 08:00 to 17:00, Saturday 09:00 to 12:00");
    assertThat(hours.stretches()).hasSize(2);
    assertThat(hours.words()).isEqualTo("Monday to Friday 08:00 to 17:00, Saturday 09:00 to 12:00");
  }

  @Test
  void allOtherHours_haveNoStretch() {
    assertThat(ContactHours.parse("all other hours").allOthers()).isTrue();
    assertThat(ContactHours.parse("at all times").allOthers()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Mon to Fri 8 to 5",
        "Monday to Friday 08:00 to 25:00",
        "Monday 08:00",
        "monday 08:00 to 09:00",
        ""
      })
  void otherWords_areRefused(String text) {
    assertThatThrownBy(() -> ContactHours.parse(text))
        .isInstanceOf(UnreadableText.class)
        .hasMessage("'" + text + "' does not give hours of the week");
  }
}
