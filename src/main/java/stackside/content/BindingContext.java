package stackside.content;

import java.util.Optional;
import stackside.model.ThingId;

/**
 * The place that is being bound: the key whose value is read, and the machine whose sockets and
 * modes are meant.
 *
 * @param words what a message calls the value
 * @param machine absent where none is, or where it is broken
 */
record BindingContext(String key, String words, Optional<ThingId> machine) {
  static final BindingContext WHOLE_FILE = new BindingContext("", "this file", Optional.empty());

  BindingContext under(String nextKey) {
    return new BindingContext(nextKey, Quote.of(nextKey), machine);
  }

  BindingContext item() {
    return new BindingContext(key, "an item of " + words, machine);
  }

  BindingContext in(Optional<ThingId> nextMachine) {
    return new BindingContext(key, words, nextMachine);
  }
}
