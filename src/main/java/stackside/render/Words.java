package stackside.render;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stackside.derive.circuit.OutcomeClass;
import stackside.derive.circuit.Reach;
import stackside.derive.program.Mismatch;
import stackside.model.Alarm;
import stackside.model.AlarmAnswer;
import stackside.model.AssetStatus;
import stackside.model.ChecklistKind;
import stackside.model.CurrentType;
import stackside.model.EnergyKind;
import stackside.model.Evidence;
import stackside.model.LesionKind;
import stackside.model.Messages;
import stackside.model.OutputSeen;
import stackside.model.PedalAction;
import stackside.model.PedalColour;
import stackside.model.ServiceEventKind;
import stackside.model.SignedKind;
import stackside.model.SocketKind;
import stackside.model.Tone;
import stackside.model.Unit;
import stackside.model.Unsaid;
import stackside.model.Waveform;
import stackside.model.Word;

/**
 * The program's own words on pages, drawings and cards, from one message file per language. A key
 * without words ends the run. {@code {0}} and so on are placeholders.
 */
public final class Words {
  /** What a closed list is called in the message files, whatever its type is called. */
  private static final Map<Class<? extends Word>, String> KINDS =
      Map.ofEntries(
          Map.entry(Alarm.class, "alarm"),
          Map.entry(AlarmAnswer.class, "alarm-answer"),
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

  /** The words for a unit: the program's in its language, and its own before these. */
  public static Words of(Unit unit) {
    Map<String, String> own = new TreeMap<>();
    unit.ownWords().forEach((key, words) -> own.put(key, words.value()));
    return in(unit.details().language().value()).with(new Words(own));
  }

  /** The program's words in a language; in English if there is no message file for it. */
  public static Words in(String language) {
    Words english = new Words(Messages.english());
    return Messages.in(language).map(each -> english.with(new Words(each))).orElse(english);
  }

  /** Reads a message file. */
  public static Words parse(String text) {
    return new Words(Messages.parse(text));
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
