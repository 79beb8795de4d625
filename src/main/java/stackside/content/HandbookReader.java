package stackside.content;

import java.util.List;
import java.util.Optional;
import stackside.model.Fact;
import stackside.model.HandbookPage;
import stackside.model.Prose;
import stackside.model.ThingId;
import stackside.source.Location;
import stackside.source.Problem;

/** Reads one page of the handbook. */
final class HandbookReader {
  private static final int LONGEST = 50_000;

  private final Findings findings;
  private final SymbolTable scope;
  private final Mentions mentions;
  private final BorrowedSources borrowed;

  HandbookReader(
      Findings findings, SymbolTable scope, Mentions mentions, BorrowedSources borrowed) {
    this.findings = findings;
    this.scope = scope;
    this.mentions = mentions;
    this.borrowed = borrowed;
  }

  /**
   * Reads a chapter of the program into the scope, with what the unit remarks on it. The chapter
   * may name others that the unit has left out, so nothing that it names is looked for.
   */
  void chapter(TextFile chapter, TextFile remarks, ThingId id) {
    if (isTooLong(remarks, id)) {
      return;
    }
    Prose text = prose(chapter, new Mentions(findings));
    Prose own = new Prose(remarks.toEndOfLine(1, 1), prose(remarks, mentions).blocks());
    if (title(own).isPresent()) {
      breakWith(
          id,
          ReadingFaults.UNUSABLE_MARKDOWN
              .at(own.at(), "remarks on a chapter have no title")
              .help("remove it; a page in place of the chapter belongs in the folder 'handbook'"));
      return;
    }
    String title =
        title(text).orElseThrow(() -> new IllegalStateException(chapter.name() + " has no title"));
    scope.put(page(chapter, id, title, text, Optional.of(own)));
  }

  /** Reads a page into the scope. Its id is its file's name. */
  void read(TextFile file, ThingId id) {
    if (isTooLong(file, id)) {
      return;
    }
    Prose prose = prose(file, mentions);
    Optional<String> title = title(prose);
    if (title.isEmpty()) {
      breakWith(
          id,
          ReadingFaults.MISSING_TITLE
              .at(prose.at(), "the page does not begin with its title")
              .help("write '# ' and the title on the first line"));
      return;
    }
    scope.put(page(file, id, title.orElseThrow(), prose, Optional.empty()));
  }

  private boolean isTooLong(TextFile file, ThingId id) {
    if (file.text().length() <= LONGEST) {
      return false;
    }
    breakWith(
        id,
        ReadingFaults.TOO_LONG
            .at(
                Location.startOf(file.name()),
                "this page is " + file.text().length() + " characters long")
            .help("split it into pages under " + LONGEST + " characters"));
    return true;
  }

  private Prose prose(TextFile file, Mentions mentioned) {
    return new MarkdownReader(TextPlaces.wholeFile(file), findings, mentioned)
        .prose(Location.startOf(file.name()), file.text());
  }

  private HandbookPage page(
      TextFile file, ThingId id, String title, Prose whole, Optional<Prose> remarks) {
    int line = 1;
    while (file.source().line(line).isBlank()) {
      line++;
    }
    Location at = file.toEndOfLine(line, 1);
    Prose text = new Prose(at, whole.blocks().subList(1, whole.blocks().size()));
    return new HandbookPage(at, id, new Fact<>(title, at), text, remarks, borrowed.citedIn(text));
  }

  private void breakWith(ThingId id, Problem problem) {
    findings.add(problem);
    scope.putBroken(id, problem.at(), List.of(problem));
  }

  private static Optional<String> title(Prose prose) {
    return prose.blocks().stream()
        .findFirst()
        .filter(Prose.Heading.class::isInstance)
        .map(Prose.Heading.class::cast)
        .filter(heading -> heading.level() == 1)
        .map(heading -> new Prose(prose.at(), List.of(heading)).plain().strip())
        .filter(text -> !text.isEmpty());
  }
}
