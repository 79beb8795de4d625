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

  HandbookReader(Findings findings, SymbolTable scope, Mentions mentions) {
    this.findings = findings;
    this.scope = scope;
    this.mentions = mentions;
  }

  /** Reads a page into the scope. Its id is its file's name. */
  void read(TextFile file, ThingId id) {
    Location at = Location.startOf(file.name());
    if (file.text().length() > LONGEST) {
      breakWith(
          id,
          ReadingFaults.TOO_LONG
              .at(at, "this page is " + file.text().length() + " characters long")
              .help("split it into pages under " + LONGEST + " characters"));
      return;
    }
    Prose prose =
        new MarkdownReader(TextPlaces.wholeFile(file), findings, mentions).prose(at, file.text());
    Optional<String> title = title(prose);
    if (title.isEmpty()) {
      breakWith(
          id,
          ReadingFaults.MISSING_TITLE
              .at(at, "the page does not begin with its title")
              .help("write '# ' and the title on the first line"));
      return;
    }
    List<Prose.Block> rest = prose.blocks().subList(1, prose.blocks().size());
    scope.put(page(file, id, title.orElseThrow(), rest));
  }

  private static HandbookPage page(
      TextFile file, ThingId id, String title, List<Prose.Block> rest) {
    int line = 1;
    while (file.source().line(line).isBlank()) {
      line++;
    }
    Location at = file.toEndOfLine(line, 1);
    return new HandbookPage(at, id, new Fact<>(title, at), new Prose(at, rest));
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
