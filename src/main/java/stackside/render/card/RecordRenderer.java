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
 * Prints the records of induction: one page for each path, with the edition of all that is read and
 * room for names by hand. A path that is too long for a page goes on upon a second sheet.
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
    Setting setting =
        new Setting(
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

  /** As many to a sheet as it holds. */
  private static List<List<PathReading>> dealt(List<PathReading> all, int most) {
    List<List<PathReading>> dealt = new ArrayList<>();
    for (int from = 0; from < all.size(); from += most) {
      dealt.add(all.subList(from, Math.min(all.size(), from + most)));
    }
    return dealt;
  }
}
