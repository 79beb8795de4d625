package stackside.render;

import java.time.LocalDate;

/** Formats dates as pages and cards print them: {@code 6 August 2026}. */
public final class Dates {
  private Dates() {}

  /** Day, name of the month and year, joined by no-break spaces. */
  public static String day(LocalDate day, Words words) {
    return words
        .say(
            "date.day",
            day.getDayOfMonth(),
            words.say("date.month-" + day.getMonthValue()),
            day.getYear())
        .replace(' ', Numbers.BOUND);
  }
}
