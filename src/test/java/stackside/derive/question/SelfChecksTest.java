package stackside.derive.question;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.derive.Analysis;
import stackside.derive.difference.Differences;
import stackside.derive.difference.RoomAtAsset;
import stackside.derive.question.Question.Elsewhere;
import stackside.model.Unit;

/**
 * Every question has one right answer and no other that could be called right. An independent
 * search of the model checks this for the demonstration and for units varied from it at random.
 */
final class SelfChecksTest {
  private static List<CardInUse> cards(Unit unit) {
    List<CardInUse> cards = new ArrayList<>();
    for (RoomAtAsset place : Differences.places(unit)) {
      cards.add(new CardInUse(place, "Settings", (1 + cards.size() % 3) + ""));
    }
    return cards;
  }

  /** Everything that is wrong with the questions of a unit. */
  private static List<String> faults(Analysis analysis, SelfChecks checks, List<CardInUse> cards) {
    Truth truth = new Truth(analysis, cards);
    List<String> faults = new ArrayList<>();
    for (Question question : checks.questions()) {
      String name = question.place().room().title() + ", " + question.subject();
      if (!truth.isRight(question.place(), question.subject(), question.right())) {
        faults.add(name + ": not right: " + question.right());
      }
      for (Elsewhere other : question.wrong()) {
        if (truth.isRight(question.place(), question.subject(), other.reply())) {
          faults.add(name + ": right as well: " + other.reply());
        }
        if (!truth.comesFrom(other.place(), question.subject(), other.reply())) {
          faults.add(name + ": from nowhere: " + other.reply());
        }
      }
    }
    return faults;
  }

  private static SelfChecks of(Unit unit) {
    return SelfChecks.of(Analysis.of(unit), cards(unit));
  }

  @Test
  void demonstrationNeverHasTwoRightAnswers() {
    Unit unit = Units.demonstration();
    Analysis analysis = Analysis.of(unit);
    SelfChecks checks = SelfChecks.of(analysis, cards(unit));
    assertThat(checks.questions()).hasSizeGreaterThan(80);
    assertThat(faults(analysis, checks, cards(unit))).isEmpty();
  }

  @Test
  void demonstrationHasEveryKindOfQuestion() {
    Map<String, Integer> kinds = new TreeMap<>();
    of(Units.demonstration())
        .questions()
        .forEach(each -> kinds.merge(each.subject().getClass().getSimpleName(), 1, Integer::sum));
    System.out.println("questions of the demonstration: " + kinds);
    assertThat(kinds)
        .containsOnlyKeys(
            Stream.of(Subject.class.getPermittedSubclasses())
                .map(Class::getSimpleName)
                .toArray(String[]::new));
    for (RoomAtAsset place : Differences.places(Units.demonstration())) {
      assertThat(of(Units.demonstration()).about(place)).hasSizeGreaterThan(6);
    }
  }

  @Test
  void aFewUnitsMadeByChanceNeverHaveTwoRightAnswers() throws Exception {
    unitsMadeByChanceNeverHaveTwoRightAnswers(6);
  }

  @Test
  @Tag("thorough")
  void manyUnitsMadeByChanceNeverHaveTwoRightAnswers() throws Exception {
    unitsMadeByChanceNeverHaveTwoRightAnswers(300);
  }

  private static void unitsMadeByChanceNeverHaveTwoRightAnswers(int variants) throws Exception {
    int read = 0;
    int asked = 0;
    Map<String, Integer> kinds = new TreeMap<>();
    List<String> faults = new ArrayList<>();
    for (long seed = 0; seed < variants; seed++) {
      Unit unit = Variants.of(seed).orElse(null);
      if (unit == null) {
        continue;
      }
      read++;
      Analysis analysis = Analysis.of(unit);
      SelfChecks checks = SelfChecks.of(analysis, cards(unit));
      asked += checks.questions().size();
      checks
          .questions()
          .forEach(each -> kinds.merge(each.subject().getClass().getSimpleName(), 1, Integer::sum));
      for (String fault : faults(analysis, checks, cards(unit))) {
        faults.add("seed " + seed + ": " + fault);
      }
    }
    System.out.println(read + " units by chance, " + asked + " questions: " + kinds);
    assertThat(faults).isEmpty();
    assertThat(read).isGreaterThan(variants * 9 / 10);
    assertThat(kinds).hasSize(Subject.class.getPermittedSubclasses().length);
  }

  /** The search itself works: it finds a second right answer that was added on purpose. */
  @Test
  void searchFindsASecondRightAnswer() {
    Unit unit = Units.demonstration();
    Analysis analysis = Analysis.of(unit);
    for (Question question : SelfChecks.of(analysis, cards(unit)).questions()) {
      Question twice =
          new Question(
              question.place(),
              question.subject(),
              question.right(),
              List.of(new Elsewhere(question.place(), question.right())));
      assertThat(faults(analysis, new SelfChecks(List.of(twice)), cards(unit)))
          .anyMatch(fault -> fault.contains("right as well"));
    }
  }

  @Test
  void sameUnitGivesTheSameQuestions() {
    assertThat(of(Units.demonstration()).toString())
        .isEqualTo(of(Units.demonstration()).toString());
  }
}
