package stackside.inspect;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import stackside.ContentEdit;
import stackside.Units;
import stackside.content.ContentReader;
import stackside.content.Reading;
import stackside.derive.Analysis;
import stackside.render.Marking;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.card.CardRenderer;
import stackside.render.card.RenderedCards;
import stackside.render.plan.CardPlan;
import stackside.render.plan.CardPlanner;
import stackside.source.Problem;

/** The cards of a small unit after an edit of its content, with all that was found on the way. */
public record EditedUnit(
    ContentEdit edit,
    Reading reading,
    Publication publication,
    List<CardPlan> plans,
    RenderedCards cards) {

  private static final Path UNIT = Path.of("src/test/resources/units/cards");
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  /** The unit as it is; its cards have nothing wrong with them. */
  public static EditedUnit untouched() {
    return after("");
  }

  /** The unit after one of its techniques was told to use the blue pedal alone. */
  public static EditedUnit pressingBlueOnly() {
    return after(
        """
        === profiles/arrowgrass.yaml
        -      blue: {mode: brisk, level: 1, limit: 45 W}
        +      blue: {mode: brisk, level: 1, limit: 45 W}
        +      press-only: blue
        """);
  }

  /** The unit after a patch, as a draft. */
  public static EditedUnit after(String patch) {
    return after(patch, Marking.DRAFT);
  }

  /** The unit after a patch. */
  public static EditedUnit after(String patch, Marking marking) {
    ContentEdit edit = ContentEdit.apply(files(), patch);
    Reading reading = read(edit.files());
    Publication publication =
        new Publication(
            Analysis.of(reading.unit().orElseThrow(() -> new AssertionError(printed(reading)))),
            List.of(),
            List.of(),
            marking,
            DAY);
    List<CardPlan> plans = CardPlanner.plans(publication);
    return new EditedUnit(
        edit, reading, publication, plans, CardRenderer.render(publication, plans));
  }

  private static String printed(Reading reading) {
    return Units.printed(reading);
  }

  private static Map<String, List<String>> files() {
    try (Stream<Path> walk = Files.walk(UNIT)) {
      Map<String, List<String>> files = new TreeMap<>();
      for (Path file : walk.filter(Files::isRegularFile).toList()) {
        files.put(UNIT.relativize(file).toString(), Files.readAllLines(file));
      }
      return files;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Reading read(Map<String, List<String>> files) {
    try (FileSystem memory = Jimfs.newFileSystem(Configuration.unix())) {
      Path folder = memory.getPath("/content");
      for (Map.Entry<String, List<String>> file : files.entrySet()) {
        Path path = folder.resolve(file.getKey());
        Files.createDirectories(path.getParent());
        Files.write(path, file.getValue());
      }
      return ContentReader.read(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Everything found in making and judging the cards. */
  public List<Problem> problems() {
    List<Problem> all = new ArrayList<>(reading.problems());
    all.addAll(cards.problems());
    all.addAll(CardRules.judge(publication, plans, cards.printed()));
    return all.stream().distinct().sorted().toList();
  }

  public CardPlan plan(String name) {
    return plans.stream().filter(plan -> plan.name().equals(name)).findFirst().orElseThrow();
  }

  public OutputFile file(String name) {
    return cards.files().stream()
        .filter(file -> file.path().equals("cards/" + name + ".pdf"))
        .findFirst()
        .orElseThrow();
  }

  /** One card as planned, with the facts of its file. */
  public InspectedCard card(String name) {
    return card(name, Inspection.of(file(name)));
  }

  /** One card as planned, with other facts. */
  public InspectedCard card(String name, Inspection seen) {
    List<Inspection> fellows = cards.printed().stream().map(Inspection::of).toList();
    return new InspectedCard(publication, plan(name), seen, fellows);
  }
}
