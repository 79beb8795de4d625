package stackside.render;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stackside.derive.circuit.OutcomeClass;
import stackside.derive.circuit.Reach;
import stackside.derive.program.Mismatch;
import stackside.model.AssetStatus;
import stackside.model.ChecklistKind;
import stackside.model.CurrentType;
import stackside.model.EnergyKind;
import stackside.model.Evidence;
import stackside.model.LesionKind;
import stackside.model.OutputSeen;
import stackside.model.PedalAction;
import stackside.model.PedalColour;
import stackside.model.ServiceEventKind;
import stackside.model.SignedKind;
import stackside.model.SocketKind;
import stackside.model.Tone;
import stackside.model.Unsaid;
import stackside.model.Waveform;
import stackside.model.Word;

/**
 * The program's own words on pages, drawings and cards, from one message file per language. A key
 * without words ends the run. {@code {0}} and so on are placeholders.
 */
public final class Words {
  private static final String FOLDER = "/templates/words/";
  private static final String ENGLISH = "en-GB";

  /** What a closed list is called in the message files, whatever its type is called. */
  private static final Map<Class<? extends Word>, String> KINDS =
      Map.ofEntries(
          Map.entry(AssetStatus.class, "asset-status"),
          Map.entry(ChecklistKind.class, "checklist-kind"),
          Map.entry(CurrentType.class, "current-type"),
          Map.entry(EnergyKind.class, "energy-kind"),
          Map.entry(Evidence.Basis.class, "basis"),
          Map.entry(LesionKind.class, "lesion-kind"),
          Map.entry(Mismatch.Field.class, "field"),
          Map.entry(OutcomeClass.class, "outcome-class"),
          Map.entry(OutputSeen.class, "output-seen"),
          Map.entry(PedalAction.class, "pedal-action"),
          Map.entry(PedalColour.class, "pedal-colour"),
          Map.entry(Reach.class, "reach"),
          Map.entry(ServiceEventKind.class, "service-event-kind"),
          Map.entry(SignedKind.class, "signed-kind"),
          Map.entry(SocketKind.class, "socket-kind"),
          Map.entry(Tone.class, "tone"),
          Map.entry(Unsaid.class, "unsaid"),
          Map.entry(Waveform.class, "waveform"));

  private static final Pattern PLACE = Pattern.compile("\\{(\\d{1,2})\\}");

  private final Map<String, String> messages;

  private Words(Map<String, String> messages) {
    this.messages = Collections.unmodifiableMap(messages);
  }

  /** The program's words in a language; in English if there is no message file for it. */
  public static Words in(String language) {
    Words english = parse(file(ENGLISH).orElseThrow());
    return language.equals(ENGLISH)
        ? english
        : file(language).map(text -> english.with(parse(text))).orElse(english);
  }

  private static Optional<String> file(String language) {
    try (InputStream stream = Words.class.getResourceAsStream(FOLDER + language + ".txt")) {
      return stream == null
          ? Optional.empty()
          : Optional.of(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the words of " + language, e);
    }
  }

  /** Reads {@code key = words} lines; empty lines and lines that begin with # are ignored. */
  public static Words parse(String text) {
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
    String key = line.substring(0, equals).strip();
    if (messages.put(key, line.substring(equals + 1).strip()) != null) {
      throw new IllegalStateException("two messages for " + key);
    }
  }

  /** These words, with the other words taking precedence. */
  public Words with(Words others) {
    Map<String, String> all = new TreeMap<>(messages);
    all.putAll(others.messages);
    return new Words(all);
  }

  /** Joins names of which any one is meant: {@code A or B}; empty if there are none. */
  public String either(List<String> names) {
    return names.stream().reduce((one, other) -> say("list.or", one, other)).orElse("");
  }

  /** The words for a key. */
  public String say(String key, Object... values) {
    String words = messages.get(key);
    if (words == null) {
      throw new IllegalStateException("no words for " + key);
    }
    return PLACE.matcher(words).replaceAll(place -> Matcher.quoteReplacement(put(place, values)));
  }

  /** What is put in is not searched for places again. */
  private static String put(MatchResult place, Object... values) {
    int number = Integer.parseInt(place.group(1));
    return number < values.length ? String.valueOf(values[number]) : place.group();
  }

  /** A choice from a closed list as it reads in a sentence: {@code on loan}. */
  public String choice(Word choice) {
    String kind = KINDS.get(choice.getClass());
    if (kind == null) {
      throw new IllegalStateException("a choice without words: " + choice.getClass());
    }
    return say("choice." + kind + "." + choice.word());
  }

  /** The messages whose keys begin with this prefix, by key without the prefix. */
  public Map<String, String> beginning(String prefix) {
    Map<String, String> some = new TreeMap<>();
    messages.forEach(
        (key, words) -> {
          if (key.startsWith(prefix)) {
            some.put(key.substring(prefix.length()), words);
          }
        });
    return some;
  }

  public Map<String, String> all() {
    return messages;
  }
}
