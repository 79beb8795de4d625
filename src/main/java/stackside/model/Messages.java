package stackside.model;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The program's own words by key, as the message files hold them. A unit may bring words of its own
 * for each key; those that reach a card are signed.
 */
public final class Messages {
  private static final String FOLDER = "/templates/words/";
  private static final String ENGLISH = "en-GB";

  /** How the keys begin whose words stand on a card, in its drawings or in what is read aloud. */
  private static final List<String> ON_CARDS =
      List.of(
          "card.",
          "choice.pedal-action.",
          "choice.pedal-colour.",
          "choice.reach.",
          "date.",
          "heard.",
          "list.",
          "outcome.",
          "panel.",
          "pedals.",
          "review.by",
          "span.place",
          "word.generator");

  private Messages() {}

  /** Whether the words of a key reach a card. */
  public static boolean reachCards(String key) {
    return ON_CARDS.stream().anyMatch(key::startsWith);
  }

  /** The program's words in English. Every key has some. */
  public static Map<String, String> english() {
    return in(ENGLISH).orElseThrow();
  }

  /** The program's words in a language; absent if it has no file for it. */
  public static Optional<Map<String, String>> in(String language) {
    try (InputStream stream = Messages.class.getResourceAsStream(FOLDER + language + ".txt")) {
      return stream == null
          ? Optional.empty()
          : Optional.of(parse(new String(stream.readAllBytes(), StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the words of " + language, e);
    }
  }

  /** Reads {@code key = words} lines; empty lines and lines that begin with # are ignored. */
  public static Map<String, String> parse(String text) {
    Map<String, String> messages = new TreeMap<>();
    text.lines().filter(Messages::saysSomething).forEach(line -> put(messages, line));
    return Collections.unmodifiableMap(messages);
  }

  /** Whether a line of a message file is neither empty nor a comment. */
  public static boolean saysSomething(String line) {
    return !line.isBlank() && !line.strip().startsWith("#");
  }

  private static void put(Map<String, String> messages, String line) {
    int equals = line.indexOf('=');
    if (equals < 0) {
      throw new IllegalStateException("no key in the message file: " + line);
    }
    String key = line.substring(0, equals).strip();
    if (messages.put(key, line.substring(equals + 1).strip()) != null) {
      throw new IllegalStateException("two messages for " + key);
    }
  }
}
