package stackside.content;

import java.util.Optional;
import stackside.model.ThingId;

/**
 * Where binding stands: the key whose value is bound, and the machine whose sockets and modes are
 * meant.
 *
 * @param words what a message calls the value
 * @param machine absent where none is, or where it is broken
 */
record Frame(String key, String words, Optional<ThingId> machine) {
  static final Frame WHOLE_FILE = new Frame("", "this file", Optional.empty());

  Frame under(String nextKey) {
    return new Frame(nextKey, Quote.of(nextKey), machine);
  }

  Frame item() {
    return new Frame(key, "an item of " + words, machine);
  }

  Frame in(Optional<ThingId> nextMachine) {
    return new Frame(key, words, nextMachine);
  }
}
