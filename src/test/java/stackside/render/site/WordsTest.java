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
import stackside.model.Condition;
import stackside.model.Kind;
import stackside.model.MonitorKind;
import stackside.model.SelectionKind;
import stackside.model.SingleFault;
import stackside.model.Word;

/** The message file: every key that pages ask for is there, and every choice has its words. */
final class WordsTest {
  private static final Pattern ASKED = Pattern.compile("say\\(\\s*\"([a-z][a-z0-9.-]*[a-z0-9])\"");

  private static Words english() {
    return Words.parse(new Templates(OwnTemplates.none()).text("words/en-GB.txt"));
  }

  @Test
  void everyKeyThatIsAskedForHasWords() throws IOException {
    Set<String> asked = new TreeSet<>();
    for (String folder : new String[] {"src/main/java/stackside/render/site", "templates"}) {
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
  void aKeyWithoutWordsStopsTheRun() {
    assertThatThrownBy(() -> Words.parse("a = b").say("c"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("c");
  }
}
