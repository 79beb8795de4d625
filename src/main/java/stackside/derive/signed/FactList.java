package stackside.derive.signed;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stackside.model.Fact;
import stackside.model.Thing;
import stackside.model.Word;
import stackside.quantity.Quantity;

/** Facts being written down under their names. What is absent is left out, never written empty. */
final class FactList {
  private final SortedMap<String, Json> members = new TreeMap<>();

  Json.Members json() {
    return new Json.Members(members);
  }

  FactList put(String name, Json value) {
    if (members.put(name, value) != null) {
      throw new IllegalStateException("the fact '" + name + "' is written down twice");
    }
    return this;
  }

  FactList text(String name, String value) {
    return put(name, Json.text(value));
  }

  FactList text(String name, Fact<String> fact) {
    return text(name, fact.value());
  }

  FactList text(String name, Optional<Fact<String>> fact) {
    fact.ifPresent(present -> text(name, present));
    return this;
  }

  FactList word(String name, Fact<? extends Word> fact) {
    return text(name, fact.value().word());
  }

  FactList words(String name, List<? extends Fact<? extends Word>> facts) {
    return list(name, facts.stream().map(fact -> Json.text(fact.value().word())).toList());
  }

  FactList quantity(String name, Fact<? extends Quantity> fact) {
    return text(name, fact.value().text());
  }

  FactList quantity(String name, Optional<? extends Fact<? extends Quantity>> fact) {
    fact.ifPresent(present -> quantity(name, present));
    return this;
  }

  FactList number(String name, Fact<Integer> fact) {
    return put(name, Json.number(fact.value()));
  }

  FactList number(String name, Optional<Fact<Integer>> fact) {
    fact.ifPresent(present -> number(name, present));
    return this;
  }

  FactList flag(String name, Fact<Boolean> fact) {
    return put(name, new Json.Flag(fact.value()));
  }

  FactList flag(String name, Optional<Fact<Boolean>> fact) {
    fact.ifPresent(present -> flag(name, present));
    return this;
  }

  /** Things whose order means nothing, by id. */
  FactList ids(String name, List<? extends Fact<? extends Thing>> things) {
    return list(
        name,
        things.stream()
            .map(fact -> fact.value().id().slug())
            .distinct()
            .sorted()
            .map(Json::text)
            .toList());
  }

  /** Values in their order. */
  FactList list(String name, List<? extends Json> values) {
    return values.isEmpty() ? this : put(name, Json.items(values));
  }

  FactList members(String name, FactList facts) {
    return facts.members.isEmpty() ? this : put(name, facts.json());
  }
}
