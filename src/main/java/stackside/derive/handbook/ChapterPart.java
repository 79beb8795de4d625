package stackside.derive.handbook;

import java.util.Arrays;
import java.util.Optional;
import stackside.model.Prose;

/** The parts of a page that are known by their heading. Every chapter of the program has all. */
public enum ChapterPart {
  REMEMBER("Remember"),
  IN_YOUR_ROOM("In your room"),
  TEST_YOURSELF("Test yourself"),
  SOURCES("Sources");

  private final String heading;

  ChapterPart(String heading) {
    this.heading = heading;
  }

  /** The part that a heading begins. */
  public static Optional<ChapterPart> begunBy(Prose.Heading heading) {
    String words = Prose.plain(heading.words()).strip();
    return Arrays.stream(values()).filter(part -> part.heading.equals(words)).findFirst();
  }
}
