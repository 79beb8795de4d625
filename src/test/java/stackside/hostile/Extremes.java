package stackside.hostile;

import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;

/** Values as extreme as anyone can type, in the form of the value that they replace. */
final class Extremes {
  private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");
  private static final Pattern DATE = Pattern.compile("\\d{4}-\\d\\d-\\d\\d");
  private static final List<String> NUMBERS =
      List.of(
          "0",
          "1",
          "-1",
          "1e308",
          "1000000",
          "999999",
          "9999",
          "99999999999999999999",
          "0.000001",
          "0.0000000000000000001",
          "NaN",
          "Infinity",
          "007",
          "1,5",
          "½",
          "٣",
          "1_000",
          "0x10");
  private static final List<String> DATES =
      List.of(
          "9999-99-99",
          "0000-00-00",
          "2100-12-31",
          "1900-01-01",
          "2026-02-30",
          "2026-11-26",
          "02-03-2026",
          "-999999999-01-01",
          "2026-11-25T00:00");
  private static final List<String> ANYTHING =
      List.of("", "~", " ", "all", "any", "none", "yes", "x".repeat(1_900), "a/b", "..", "con");

  private final Random chance;

  Extremes(Random chance) {
    this.chance = chance;
  }

  String of(String value) {
    if (DATE.matcher(value).matches()) {
      return one(DATES);
    }
    boolean counts = NUMBER.matcher(value).find();
    if (!counts || chance.nextInt(6) == 0) {
      return chance.nextBoolean() ? one(ANYTHING) : value + one(NUMBERS);
    }
    return NUMBER
        .matcher(value)
        .replaceAll(found -> chance.nextBoolean() ? one(NUMBERS) : found.group());
  }

  private String one(List<String> list) {
    return list.get(chance.nextInt(list.size()));
  }
}
