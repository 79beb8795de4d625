package stackside.render.card;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stackside.derive.path.PathReading;
import stackside.model.LearningPath;
import stackside.render.LearningRecords;
import stackside.render.OutputFile;
import stackside.render.Publication;
import stackside.render.plan.LetterHeights;
import stackside.render.plan.TypeScale;

/**
 * Prints the induction records: one page per path, with the edition of everything on the reading
 * list and space for handwritten names. A path too long for one page continues on a second sheet.
 */
public final class RecordRenderer {

  private RecordRenderer() {}

  /** The records of all paths. */
  public static List<OutputFile> render(Publication publication) {
    return publication.unit().paths().stream().flatMap(path -> sheets(path, publication)).toList();
  }

  private static Stream<OutputFile> sheets(LearningPath path, Publication publication) {
    List<List<PathReading>> sheets =
        dealt(PathReading.of(path, publication.unit()), RecordSheet.MOST_ROWS);
    List<OutputFile> files = new ArrayList<>();
    for (int sheet = 1; sheet <= sheets.size(); sheet++) {
      files.add(file(path, publication, sheets.get(sheet - 1), sheet, sheets.size()));
    }
    return files.stream();
  }

  private static OutputFile file(
      LearningPath path, Publication publication, List<PathReading> rows, int sheet, int of) {
    String name = LearningRecords.path(path.id(), sheet);
    Typeface typeface = Typeface.forDocument(name);
    CardStyle setting =
        new CardStyle(
            typeface,
            LetterHeights.measured(),
            TypeScale.of(publication.unit().details().readingDistance()));
    RecordSheet record = new RecordSheet(publication, path, rows, setting, sheet, of);
    CardDocument document =
        new CardDocument(
            publication.words().say("record.of", path.title()),
            publication.unit().details().language().value(),
            publication.on(),
            record.said(),
            typeface);
    return new OutputFile(name, document.bytes(record::paint));
  }

  /** Splits the readings into sheets, as many as fit on each. */
  private static List<List<PathReading>> dealt(List<PathReading> all, int most) {
    List<List<PathReading>> dealt = new ArrayList<>();
    for (int from = 0; from < all.size(); from += most) {
      dealt.add(all.subList(from, Math.min(all.size(), from + most)));
    }
    return dealt;
  }
}
