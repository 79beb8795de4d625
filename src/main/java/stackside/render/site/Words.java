package stackside.render.site;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * The words of the pages themselves, from one message file a language. A key without words stops
 * the run. {@code {0}} and so on stand for what is put in.
 */
public final class Words {
  private final Map<String, String> messages;

  private Words(Map<String, String> messages) {
    this.messages = Collections.unmodifiableMap(messages);
  }

  /** Reads {@code key = words} lines; empty lines and lines that begin with # say nothing. */
  static Words parse(String text) {
    Map<String, String> messages = new TreeMap<>();
    text.lines()
        .map(String::strip)
        .filter(line -> !line.isEmpty() && !line.startsWith("#"))
        .forEach(line -> put(messages, line));
    return new Words(messages);
  }

  private static void put(Map<String, String> messages, String line) {
    int equals = line.indexOf('=');
    if (equals < 0) {
      throw new IllegalStateException("no key in the message file: " + line);
    }
    messages.put(line.substring(0, equals).strip(), line.substring(equals + 1).strip());
  }

  /** The words of a key. */
  public String say(String key, Object... values) {
    String words = messages.get(key);
    if (words == null) {
      throw new IllegalStateException("no words for " + key);
    }
    for (int i = 0; i < values.length; i++) {
      words = words.replace("{" + i + "}", String.valueOf(values[i]));
    }
    return words;
  }

  /** The message file as the program's scripts take it: only keys that begin so. */
  Map<String, String> beginning(String prefix) {
    Map<String, String> some = new TreeMap<>();
    messages.forEach(
        (key, words) -> {
          if (key.startsWith(prefix)) {
            some.put(key.substring(prefix.length()), words);
          }
        });
    return some;
  }

  Map<String, String> all() {
    return messages;
  }
}
