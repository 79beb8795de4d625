package stackside.content;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import stackside.model.HandbookPage;

/** The chapters that come with the program, and the file of the publications that they cite. */
public final class Chapters {
  private static final String RESOURCES = "/stackside/chapters/";

  private Chapters() {}

  /** The ids of all chapters, in reading order. */
  public static List<String> names() {
    return resource("chapters.txt").lines().toList();
  }

  /** The text of a chapter, as its author wrote it. */
  public static Optional<String> text(String id) {
    return names().contains(id) ? Optional.of(resource(id + ".md")) : Optional.empty();
  }

  static Optional<TextFile> file(String id) {
    return text(id).map(text -> TextFile.of(HandbookPage.PROGRAM + "chapters/" + id + ".md", text));
  }

  static TextFile sources() {
    return TextFile.of(HandbookPage.PROGRAM + "chapters/sources.yaml", resource("sources.yaml"));
  }

  private static String resource(String name) {
    try (InputStream stream = Chapters.class.getResourceAsStream(RESOURCES + name)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks its file " + RESOURCES + name);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + RESOURCES + name, e);
    }
  }
}
