package stackside.model;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * When a contact answers: periods of the week, or all hours not covered by the other contacts of
 * the same place. A period that ends at or before its start runs past midnight.
 *
 * @param words the hours as written, for printing
 * @param stretches empty for "all other hours"
 */
public record ContactHours(String words, List<Stretch> stretches) {
  private static final Pattern FORM =
      Pattern.compile(
          "(?<first>[A-Z][a-z]+)(?: to (?<last>[A-Z][a-z]+))? (?<from>\\d\\d:\\d\\d) to (?<to>\\d\\d:\\d\\d)");
  private static final LocalTime MIDNIGHT = LocalTime.MIDNIGHT;

  /** The same hours on each of several days. */
  public record Stretch(List<DayOfWeek> days, LocalTime from, LocalTime to) {
    public Stretch {
      days = List.copyOf(days);
    }

    boolean holds(DayOfWeek day, LocalTime time) {
      if (from.isBefore(to)) {
        return days.contains(day) && !time.isBefore(from) && time.isBefore(to);
      }
      return (days.contains(day) && !time.isBefore(from))
          || (days.contains(day.minus(1)) && time.isBefore(to));
    }
  }

  public ContactHours {
    stretches = List.copyOf(stretches);
  }

  /**
   * Reads "Monday to Friday 08:00 to 17:00", several such periods separated by commas, "at all
   * times" or "all other hours".
   *
   * @throws UnreadableText if the text is none of these
   */
  public static ContactHours parse(String text) {
    String words = text.strip();
    if (words.equals("all other hours")) {
      return new ContactHours(words, List.of());
    }
    if (words.equals("at all times")) {
      return new ContactHours(
          words, List.of(new Stretch(List.of(DayOfWeek.values()), MIDNIGHT, MIDNIGHT)));
    }
    List<Stretch> stretches = new ArrayList<>();
    for (String part : words.split(", ", -1)) {
      stretches.add(stretch(text, part));
    }
    return new ContactHours(words, stretches);
  }

  private static Stretch stretch(String text, String part) {
    Matcher form = FORM.matcher(part);
    if (!form.matches()) {
      throw unreadable(text);
    }
    DayOfWeek first = day(text, form.group("first"));
    String until = form.group("last");
    DayOfWeek last = until == null ? first : day(text, until);
    List<DayOfWeek> days = new ArrayList<>();
    for (DayOfWeek day = first; !day.equals(last); day = day.plus(1)) {
      days.add(day);
    }
    days.add(last);
    return new Stretch(days, time(text, form.group("from")), time(text, form.group("to")));
  }

  private static DayOfWeek day(String text, String word) {
    for (DayOfWeek day : DayOfWeek.values()) {
      if (day.name().equals(word.toUpperCase(Locale.ROOT))) {
        return day;
      }
    }
    throw unreadable(text);
  }

  private static LocalTime time(String text, String clock) {
    if (clock.equals("24:00")) {
      return MIDNIGHT;
    }
    if (!clock.matches("([01]\\d|2[0-3]):[0-5]\\d")) {
      throw unreadable(text);
    }
    return LocalTime.parse(clock);
  }

  private static UnreadableText unreadable(String text) {
    return new UnreadableText(
        "'" + text + "' does not give hours of the week",
        "write days and hours as in 'Monday to Friday 08:00 to 17:00', or 'at all times', or 'all other"
            + " hours'");
  }

  /** Whether some period contains this hour of the week; always false for "all other hours". */
  boolean hold(DayOfWeek day, LocalTime time) {
    return stretches.stream().anyMatch(stretch -> stretch.holds(day, time));
  }

  /** Whether these are the hours not covered by others. */
  public boolean allOthers() {
    return stretches.isEmpty();
  }
}
