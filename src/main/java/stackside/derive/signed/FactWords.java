package stackside.derive.signed;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Signed facts in words, for the person who is about to sign: each fact under its name, each thing
 * by its own name with the rest behind it, each member of a list on a line of its own.
 */
public final class FactWords {
  private static final String INDENT = "  ";

  private final List<String> lines = new ArrayList<>();

  private FactWords() {}

  /** The lines, in the order in which the facts are signed. */
  public static List<String> lines(Json.Members facts) {
    FactWords words = new FactWords();
    words.addAll("", facts);
    return List.copyOf(words.lines);
  }

  private void addAll(String indent, Json.Members facts) {
    facts.values().forEach((key, value) -> add(indent + spoken(key), indent, value));
  }

  private void add(String label, String indent, Json value) {
    if (holdsGroups(value)) {
      lines.add(label + ":");
      int number = 0;
      for (Json item : ((Json.Items) value).values()) {
        number++;
        lines.add(indent + INDENT + inWords(item, number + ". "));
      }
    } else if (isDeep(value)) {
      lines.add(label + ":");
      addAll(indent + INDENT, (Json.Members) value);
    } else {
      lines.add(label + ": " + inWords(value, ""));
    }
  }

  private static boolean holdsGroups(Json value) {
    return value instanceof Json.Items items
        && items.values().stream().anyMatch(Json.Members.class::isInstance);
  }

  /** A group that has no name of its own is told fact by fact. */
  private static boolean isDeep(Json value) {
    return value instanceof Json.Members members
        && ownName(members).isEmpty()
        && members.values().values().stream().anyMatch(Json::isSeveral);
  }

  private static String inWords(Json value, String number) {
    if (value instanceof Json.Members members) {
      Optional<String> name = ownName(members);
      String rest =
          members.values().entrySet().stream()
              .filter(member -> !member.getKey().equals("id") && !isName(member, name))
              .map(member -> named(member.getKey()) + inWords(member.getValue(), ""))
              .collect(Collectors.joining(", "));
      return name.map(each -> rest.isEmpty() ? each : each + " (" + rest + ")")
          .orElse(number + (rest.isEmpty() ? members.text("id").orElse("") : rest));
    }
    if (value instanceof Json.Items items) {
      return items.values().stream()
          .map(item -> inWords(item, ""))
          .collect(Collectors.joining(", "));
    }
    if (value instanceof Json.Leaf leaf) {
      return inWords(leaf);
    }
    throw new IllegalStateException("a fact without words: " + value);
  }

  private static String inWords(Json.Leaf leaf) {
    return leaf instanceof Json.Flag flag ? (flag.value() ? "yes" : "no") : leaf.words();
  }

  private static Optional<String> ownName(Json.Members members) {
    return members.text("name").or(() -> members.text("do")).or(() -> members.text("id"));
  }

  private static boolean isName(Map.Entry<String, Json> member, Optional<String> name) {
    return (member.getKey().equals("name") || member.getKey().equals("do"))
        && member.getValue() instanceof Json.Text text
        && name.filter(text.value()::equals).isPresent();
  }

  /** A number before a number would be read as one with it. */
  private static String named(String key) {
    return key.matches("[0-9.]+") ? "level " + key + ": " : spoken(key) + " ";
  }

  private static String spoken(String key) {
    return key.replace('-', ' ');
  }
}
