package stackside.generate;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** How one part of a generated unit differs, at random, from the pattern. */
final class Variation {
  private static final Pattern OFFERED = Pattern.compile("(?m)^(  - \\{lesions: )\\[([^\\]]+)\\]");
  private static final Pattern ON_CARD = Pattern.compile("(?m)(, lesions: )\\[([^\\]]+)\\]");
  private static final Pattern COPIES = Pattern.compile("(?m)^copies: \\d+$");
  private static final Pattern PHONE = Pattern.compile("phone: (ext\\.|bleep) (\\d+)");
  private static final Pattern LIMIT = Pattern.compile("\\blimit: (\\d+) W");
  private static final Pattern READ_LIMIT =
      Pattern.compile("(?m)^(EQ-\\d+,[^\\n]*),(\\d+) W,([A-Z]+)$");
  private static final int STEP = 20;
  private static final int SAFE_TO_MOVE = 30;

  private final Random chance;
  private final int shift;

  Variation(Random chance) {
    this.chance = chance;
    this.shift = STEP * chance.nextInt(2);
  }

  SortedMap<String, String> in(SortedMap<String, String> pattern) {
    SortedMap<String, String> varied = new TreeMap<>(pattern);
    varied.computeIfPresent("unit.yaml", (name, text) -> phones(text));
    varied.computeIfPresent("program-readings.csv", (name, text) -> readings(text));
    varied.replaceAll((name, text) -> name.startsWith("rooms/") ? room(text) : text);
    varied.replaceAll((name, text) -> name.startsWith("profiles/") ? limits(text) : text);
    return varied;
  }

  private String phones(String text) {
    return PHONE
        .matcher(text)
        .replaceAll(it -> "phone: " + it.group(1) + " " + digits(it.group(2).length()));
  }

  private String digits(int count) {
    StringBuilder digits = new StringBuilder();
    for (int i = 0; i < count; i++) {
      digits.append(1 + chance.nextInt(9));
    }
    return digits.toString();
  }

  private String limits(String text) {
    return LIMIT.matcher(text).replaceAll(it -> "limit: " + moved(it.group(1)) + " W");
  }

  private String readings(String text) {
    return READ_LIMIT
        .matcher(text)
        .replaceAll(it -> it.group(1) + "," + moved(it.group(2)) + " W," + it.group(3));
  }

  /** Moves all by the same step, so that a thin wall stays below a thick one. */
  private int moved(String watts) {
    int limit = Integer.parseInt(watts);
    return limit >= SAFE_TO_MOVE ? limit + shift : limit;
  }

  private String room(String text) {

    String offers = OFFERED.matcher(text).replaceAll(it -> it.group(1) + "[" + some(it) + "]");
    String cards =
        ON_CARD.matcher(offers).replaceAll(it -> it.group(1) + "[" + left(it, offers) + "]");
    return COPIES.matcher(cards).replaceAll("copies: " + (1 + chance.nextInt(3)));
  }

  /** Most of what is offered, but never nothing. */
  private String some(MatchResult offered) {
    List<String> lesions = lesions(offered);
    List<String> kept =
        lesions.stream().filter(lesion -> chance.nextInt(12) > 0).collect(Collectors.toList());
    if (kept.isEmpty()) {
      kept.add(lesions.get(0));
    }
    return String.join(", ", kept);
  }

  private static String left(MatchResult onCard, String offers) {
    List<String> lesions = lesions(onCard);
    List<String> kept =
        lesions.stream()
            .filter(
                lesion ->
                    OFFERED.matcher(offers).results().anyMatch(it -> lesions(it).contains(lesion)))
            .toList();
    return String.join(", ", kept.isEmpty() ? lesions : kept);
  }

  private static List<String> lesions(MatchResult listed) {
    return Arrays.asList(listed.group(2).split(", "));
  }
}
