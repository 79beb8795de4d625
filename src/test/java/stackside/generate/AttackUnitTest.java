package stackside.generate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stackside.ModelRecords;
import stackside.Units;
import stackside.content.Reading;
import stackside.model.Fact;
import stackside.model.Initials;
import stackside.model.Prose;
import stackside.model.ThingId;
import stackside.source.Location;

/**
 * The attack misses no text: every component of the model that holds words, found by reflection,
 * contains an attack somewhere in the unit, or is on the list of those whose form excludes one.
 */
final class AttackUnitTest {
  private static final Pattern ATTACK =
      Pattern.compile("(?s).*(attacked|<[a-z/!]|javascript:|\\$\\{|127\\.0\\.0\\.1).*");

  /** Why no attack is possible there: the reader refuses anything that does not have this form. */
  private static final Map<String, String> CLOSED =
      Map.of(
          "Initials.text", Initials.FORM_IN_WORDS,
          "CardPart.name", "small letters, digits and single hyphens or blanks",
          "ConnectorId.slug", "small letters, digits and single hyphens",
          "LampId.slug", "small letters, digits and single hyphens",
          "ContactHours.words", "days and hours of the week",
          "Cold.how", "what Profile.cold says, as an answer",
          "NotApproved.instead", "what Profile.notApproved says, as an answer",
          "UnitDetails.language", "a language tag",
          "Unit.templates", "the unit's own HTML, which only its templates may print",
          "Unit.ownWords", "words in place of the program's; see TemplateTricksTest");

  private final TreeSet<String> attacked = new TreeSet<>();

  @Test
  void everyTextOfTheModelIsAttacked(@TempDir Path folder) throws IOException {
    AttackUnit.write(folder, "http://127.0.0.1:9");
    Reading reading = Units.reading(folder);
    inside(reading.unit().orElseThrow());
    TreeSet<String> missing = new TreeSet<>(texts());
    missing.removeAll(attacked);
    missing.removeAll(CLOSED.keySet());
    assertThat(texts()).hasSizeGreaterThan(40).containsAll(CLOSED.keySet());
    assertThat(attacked.stream().filter(CLOSED::containsKey)).isEmpty();
    System.out.printf(
        "attacked unit: %d texts of the model, %d attacked, %d closed by their form%n",
        texts().size(), attacked.size(), CLOSED.size());
    assertThat(missing).as(Units.printed(reading)).isEmpty();
  }

  /** The components that hold words. */
  private static List<String> texts() {
    return ModelRecords.components(AttackUnitTest::isOfAuthors, AttackUnitTest::holdsWords);
  }

  private static boolean isOfAuthors(Class<?> type) {
    return ModelRecords.isWritten(type) && type != ThingId.class;
  }

  private static boolean holdsWords(RecordComponent part) {
    String type = part.getGenericType().getTypeName();
    return type.contains("java.lang.String") || type.contains("model.Prose");
  }

  private void inside(Object value) {
    if (isOfAuthors(value.getClass()) && !(value instanceof Location)) {
      for (RecordComponent part : value.getClass().getRecordComponents()) {
        component(ModelRecords.name(value.getClass(), part), ModelRecords.read(value, part));
      }
    }
  }

  private void component(String component, Object value) {
    if (value instanceof Optional<?> some) {
      some.ifPresent(each -> component(component, each));
    } else if (value instanceof Collection<?> list) {
      list.forEach(each -> component(component, each));
    } else if (value instanceof Map<?, ?> map) {
      map.values().forEach(each -> component(component, each));
    } else if (value instanceof Fact<?> fact) {
      component(component, fact.value());
    } else if (value instanceof String || value instanceof Prose) {
      String words = value instanceof Prose prose ? prose.plain() : (String) value;
      if (ATTACK.matcher(words).matches()) {
        attacked.add(component);
      }
    } else {
      inside(value);
    }
  }
}
