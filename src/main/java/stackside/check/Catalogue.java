package stackside.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stackside.source.Fault;
import stackside.source.Problem;

/**
 * The rules about one kind of thing, subject by subject. The checks, the rule pages and {@code
 * explain} are made from it.
 *
 * @param <T> what the rules look at: a unit or a card
 */
public record Catalogue<T>(List<Rule<T>> rules) {

  public Catalogue {
    rules = List.copyOf(rules);
  }

  /** All rules of these subjects. */
  @SafeVarargs
  public static <T> Catalogue<T> of(List<Rule<T>>... subjects) {
    List<Rule<T>> rules = new ArrayList<>();
    for (List<Rule<T>> subject : subjects) {
      rules.addAll(subject);
    }
    return new Catalogue<>(rules);
  }

  /** These rules, then the others. */
  public Catalogue<T> with(Catalogue<T> others) {
    return of(rules, others.rules);
  }

  /** What the rules can find. */
  public List<Fault> faults() {
    return rules.stream().map(Rule::fault).toList();
  }

  /** What all rules find, in any order. The same problem may be found twice. */
  public Stream<Problem> problems(T checked) {
    return rules.parallelStream().flatMap(rule -> rule.problems(checked).stream());
  }
}
