package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stackside.derive.circuit.OutcomeClass;
import stackside.derive.circuit.Reach;
import stackside.derive.program.Mismatch;
import stackside.model.AssetStatus;
import stackside.model.ChecklistKind;
import stackside.model.Condition;
import stackside.model.CurrentType;
import stackside.model.EnergyKind;
import stackside.model.Evidence;
import stackside.model.Kind;
import stackside.model.LesionKind;
import stackside.model.MonitorKind;
import stackside.model.OutputSeen;
import stackside.model.PedalAction;
import stackside.model.PedalColour;
import stackside.model.SelectionKind;
import stackside.model.ServiceEventKind;
import stackside.model.SignedKind;
import stackside.model.SingleFault;
import stackside.model.SocketKind;
import stackside.model.Tone;
import stackside.model.Waveform;
import stackside.model.Word;
import stackside.render.Words;

/** The message file has every key that pages use, and words for every choice. */
final class WordsTest {
  private static final Pattern ASKED = Pattern.compile("say\\(\\s*\"([a-z][a-z0-9.-]*[a-z0-9])\"");

  private static Words english() {
    return Words.in("en-GB");
  }

  @Test
  void everyKeyThatIsAskedForHasWords() throws IOException {
    Set<String> asked = new TreeSet<>();
    for (String folder : new String[] {"src/main/java/stackside/render", "templates"}) {
      try (Stream<Path> files = Files.walk(Path.of(folder))) {
        for (Path file : files.filter(each -> each.toString().matches(".*(java|ftlh)")).toList()) {
          Matcher key = ASKED.matcher(Files.readString(file));
          while (key.find()) {
            asked.add(key.group(1));
          }
        }
      }
    }
    assertThat(asked).hasSizeGreaterThan(100);
    assertThat(english().all().keySet()).containsAll(asked);
  }

  @Test
  void everyChoiceOfAClosedListHasWords() {
    Words words = english();
    for (Kind kind : Kind.values()) {
      assertThat(words.say("kind." + kind.word())).isNotBlank();
    }
    all(words, "condition.", Condition.values());
    all(words, "fault.", SingleFault.values());
    all(words, "selects.", SelectionKind.values());
    all(words, "monitor.", MonitorKind.values());
  }

  @Test
  void everyChoiceThatStandsInASentenceHasWords() {
    Words words = english();
    Stream.<Word[]>of(
            AssetStatus.values(),
            ChecklistKind.values(),
            CurrentType.values(),
            EnergyKind.values(),
            Evidence.Basis.values(),
            LesionKind.values(),
            Mismatch.Field.values(),
            OutcomeClass.values(),
            OutputSeen.values(),
            PedalAction.values(),
            PedalColour.values(),
            Reach.values(),
            ServiceEventKind.values(),
            SignedKind.values(),
            SocketKind.values(),
            Tone.values(),
            Waveform.values())
        .flatMap(Stream::of)
        .forEach(choice -> assertThat(words.choice(choice)).isNotBlank());
  }

  @Test
  void aMessageFileOfAnotherLanguageMayHaveOnlySomeOfTheWords() {
    Words words = english().with(Words.parse("menu.start = Anfang"));
    assertThat(words.say("menu.start")).isEqualTo("Anfang");
    assertThat(words.say("menu.rooms")).isEqualTo("Rooms");
  }

  private static void all(Words words, String prefix, Word... choices) {
    for (Word choice : choices) {
      assertThat(words.say(prefix + choice.word())).isNotBlank();
    }
  }

  @Test
  void whatIsPutInStandsWhereItBelongs() {
    assertThat(Words.parse("a = {1} before {0}").say("a", "x", 2)).isEqualTo("2 before x");
  }

  @Test
  void whatIsPutInIsNotSearchedAgain() {
    assertThat(Words.parse("a = {0} and {1}, {0}").say("a", "Room {1}", "$1"))
        .isEqualTo("Room {1} and $1, Room {1}");
  }

  /** The names of closed lists in message files, which other languages use too. */
  @Test
  void closedListsKeepTheirNames() {
    assertThat(
            english().beginning("choice.").keySet().stream()
                .map(key -> key.replaceAll("\\..*", "")))
        .containsOnly(
            "alarm",
            "alarm-answer",
            "asset-status",
            "basis",
            "checklist-kind",
            "current-type",
            "energy-kind",
            "field",
            "lesion-kind",
            "outcome-class",
            "output-seen",
            "pedal-action",
            "pedal-colour",
            "reach",
            "service-event-kind",
            "signed-kind",
            "socket-kind",
            "tone",
            "unsaid",
            "waveform");
  }

  @Test
  void aClosedListWithoutANameStopsTheRun() {
    assertThatThrownBy(() -> english().choice(Condition.MAINS_OFF))
        .isInstanceOf(IllegalStateException.class);
  }

  /** The safety warnings on a card must not be reworded by accident. */
  @Test
  void theCardWarnsInTheseWords() {
    Words words = english();
    assertThat(words.say("card.asset-differs"))
        .isEqualTo("Asset number differs? Do not use this card.");
    assertThat(words.say("card.destroy")).isEqualTo("Destroy older editions.");
    assertThat(words.say("card.mark-draft")).isEqualTo("DRAFT, do not hang.");
    assertThat(words.say("card.mark-demonstration"))
        .isEqualTo("Demonstration: invented, not for patients.");
    assertThat(words.say("card.unsigned")).isEqualTo("Not approved.");
    assertThat(words.say("card.not-approved")).isEqualTo("Not approved.");
    assertThat(words.say("card.several-ask"))
        .isEqualTo("The content contradicts itself here. Do not use this row.");
  }

  @Test
  void twoMessagesForOneKeyStopTheRun() {
    assertThatThrownBy(() -> Words.parse("a = b\na = c"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("two messages for a");
  }

  @Test
  void aKeyWithoutWordsStopsTheRun() {
    assertThatThrownBy(() -> Words.parse("a = b").say("c"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("c");
  }
}
