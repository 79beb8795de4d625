package stackside.derive.signed;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * One fact that differs between what was signed and what stands now.
 *
 * @param name where it is, from the outside in: {@code settings yellow limit}
 * @param before absent where it is new
 * @param after absent where it is gone
 */
public record FactChange(String name, Optional<String> before, Optional<String> after) {

  /** Every difference between two lists of facts. */
  public static List<FactChange> between(Json.Members before, Json.Members after) {
    Map<String, String> old = leaves(before);
    Map<String, String> now = leaves(after);
    Set<String> names = new LinkedHashSet<>(old.keySet());
    names.addAll(now.keySet());
    List<FactChange> changes =
        names.stream()
            .map(
                name ->
                    new FactChange(
                        name,
                        Optional.ofNullable(old.get(name)),
                        Optional.ofNullable(now.get(name))))
            .filter(change -> !change.before().equals(change.after()))
            .toList();
    return changes.isEmpty()
        ? order(List.copyOf(old.keySet()), List.copyOf(now.keySet()))
        : changes;
  }

  /** The first place at which the same facts stand in another order: nothing else shows it. */
  private static List<FactChange> order(List<String> before, List<String> after) {
    for (int i = 0; i < before.size(); i++) {
      if (!before.get(i).equals(after.get(i))) {
        return List.of(
            new FactChange("order", Optional.of(before.get(i)), Optional.of(after.get(i))));
      }
    }
    return List.of();
  }

  /** All facts, one a line: {@code settings yellow limit: 60 W}. */
  public static List<String> facts(Json.Members facts) {
    return leaves(facts).entrySet().stream()
        .map(leaf -> leaf.getKey() + ": " + leaf.getValue())
        .toList();
  }

  /** The change in words: {@code settings yellow limit: 60 W → 50 W}. */
  public String words() {
    return name + ": " + before.orElse("nothing") + " → " + after.orElse("nothing");
  }

  private static Map<String, String> leaves(Json value) {
    Map<String, String> leaves = new LinkedHashMap<>();
    collect("", value, leaves);
    return leaves;
  }

  private static void collect(String name, Json value, Map<String, String> leaves) {
    if (value instanceof Json.Members members) {
      for (Map.Entry<String, Json> member : members.values().entrySet()) {
        collect(joined(name, member.getKey()), member.getValue(), leaves);
      }
    } else if (value instanceof Json.Items items) {
      collectItems(name, items, leaves);
    } else if (value instanceof Json.Leaf leaf) {
      leaves.put(name, leaf.words());
    } else {
      throw new IllegalStateException("a fact that cannot change: " + value);
    }
  }

  /**
   * Plain texts are one fact together; other items go by their id, or by a name that no other has,
   * so that one put between does not make the rest look changed; or else by their number.
   */
  private static void collectItems(String name, Json.Items items, Map<String, String> leaves) {
    List<String> texts = new ArrayList<>();
    int number = 0;
    for (Json item : items.values()) {
      number++;
      if (item instanceof Json.Members members) {
        String own =
            members
                .text("id")
                .or(() -> members.text("name").filter(only(items)).map(each -> "'" + each + "'"))
                .orElse(String.valueOf(number));
        collect(joined(name, own), members, leaves);
      } else if (item instanceof Json.Leaf leaf) {
        texts.add(leaf.words());
      } else if (item instanceof Json.Items) {
        texts.add(CanonicalJson.of(item));
      } else {
        throw new IllegalStateException("an item that cannot change: " + item);
      }
    }
    if (!texts.isEmpty()) {
      leaves.put(name, String.join(", ", texts));
    }
  }

  private static Predicate<String> only(Json.Items items) {
    return name ->
        items.values().stream()
                .flatMap(
                    item ->
                        item instanceof Json.Members members
                            ? members.text("name").stream()
                            : Stream.empty())
                .filter(name::equals)
                .count()
            == 1;
  }

  private static String joined(String name, String member) {
    return name.isEmpty() ? member : name + " " + member;
  }
}
