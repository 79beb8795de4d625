package stackside.derive.question;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import stackside.content.ContentReader;
import stackside.generate.GeneratedUnit;
import stackside.model.Unit;

/**
 * Units derived from the demonstration that contain, at random, more similar things than a real
 * unit would: labels that differ only in case, one program under one number everywhere, one
 * telephone for two contacts, swapped pedals, overlapping hours, checks worded as in other drills.
 */
final class Variants {
  private static final Pattern LABEL = Pattern.compile("label: \"?([A-Z0-9])\"?(?=,)");
  private static final Pattern PHONE = Pattern.compile("phone: [^,}]+");
  private static final Pattern HOURS = Pattern.compile("hours: (\"Monday[^\"]*\"|all other hours)");
  private static final Pattern PROGRAM = Pattern.compile("\\{slot: \\d+, shown-as: [^}]+\\}");
  private static final Pattern LIMIT = Pattern.compile("limit: \\d+ W");
  private static final Pattern SELECTS = Pattern.compile("selects-socket: \\S+");
  private static final Pattern FIRST_CHECK = Pattern.compile("\\{do: [^,]+");
  private static final Pattern TONE = Pattern.compile("(sign: \\{tone: )\\w+");
  private static final Pattern PLATE = Pattern.compile("neutral-electrode: \\S+-\\w+");

  private Variants() {}

  /** The unit for a seed; absent if the random changes made it unreadable. */
  static Optional<Unit> of(long seed) throws IOException {
    Random chance = new Random(seed);
    SortedMap<String, String> files = new TreeMap<>(GeneratedUnit.of(1, seed).files());
    files.replaceAll((name, text) -> varied(name, text, chance));
    try (FileSystem memory = Jimfs.newFileSystem(Configuration.unix())) {
      new GeneratedUnit(files).write(memory.getPath("/content"));
      return ContentReader.read(memory.getPath("/content")).unit();
    }
  }

  private static String varied(String name, String text, Random chance) {
    if (name.startsWith("machines/")) {
      String labelled =
          some(
              LABEL,
              text,
              chance,
              List.of("label: \"1\"", "label: \"a\"", "label: \"A\"", "label: \"X\""));
      return some(
          SELECTS, labelled, chance, List.of("selects-socket: by-button", "selects-socket: fixed"));
    }
    if (name.equals("unit.yaml")) {
      String called =
          some(PHONE, text, chance, List.of("phone: ext. 1", "phone: EXT. 1", "phone: bleep 2"));
      return some(
          HOURS,
          called,
          chance,
          List.of(
              "hours: at all times",
              "hours: \"Sunday to Thursday 22:00 to 04:00\"",
              "hours: \"Monday to Friday 07:30 to 18:00, Sunday 12:00 to 18:00\""));
    }
    if (name.startsWith("profiles/")) {
      String programmed =
          some(
              PROGRAM,
              text,
              chance,
              List.of("{slot: 3, shown-as: EMR}", "{slot: 4, shown-as: EMR}"));
      String plated =
          some(
              PLATE,
              programmed,
              chance,
              List.of("neutral-electrode: split-adult", "neutral-electrode: plain-adult"));
      return some(LIMIT, plated, chance, List.of("limit: 40 W", "limit: 30 W"));
    }
    if (name.startsWith("drills/")) {
      String checked =
          some(
              FIRST_CHECK,
              text,
              chance,
              List.of("{do: Look at the plate plug", "{do: look at the plate  plug"));
      return TONE.matcher(checked)
          .replaceAll(found -> chance.nextInt(6) == 0 ? found.group(1) + "usual" : found.group());
    }
    return name.equals("foot-switches.yaml") && chance.nextBoolean()
        ? text.replace(
            "{colour: yellow, does: cut}, {colour: blue, does: coagulation}",
            "{colour: blue, does: coagulation}, {colour: yellow, does: cut}")
        : text;
  }

  private static String some(Pattern pattern, String text, Random chance, List<String> others) {
    return pattern
        .matcher(text)
        .replaceAll(
            (MatchResult found) ->
                chance.nextInt(4) == 0
                    ? others.get(chance.nextInt(others.size()))
                    : java.util.regex.Matcher.quoteReplacement(found.group()));
  }
}
