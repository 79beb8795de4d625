package stackside.render;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.Locale;

/** Writes days as pages and cards print them: {@code 6 August 2026}. */
public final class Dates {
  private Dates() {}

  /** Day, month by name, year, with spaces that do not break. */
  public static String day(LocalDate day) {
    String month = day.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    return day.getDayOfMonth() + "" + Numbers.BOUND + month + Numbers.BOUND + day.getYear();
  }
}
