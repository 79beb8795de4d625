package stackside.content;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import stackside.model.Citation;
import stackside.model.Kind;
import stackside.model.Prose;
import stackside.model.ThingId;

/**
 * The publications that the program describes. A page of the handbook may cite them. Where the unit
 * describes one under the same id, its own stands.
 */
final class BorrowedSources {
  private final ContentFolder folder;
  private final Findings findings;
  private final SymbolTable unit;
  private final Map<ThingId, Citation> known = new TreeMap<>();

  BorrowedSources(ContentFolder folder, Findings findings, SymbolTable unit) {
    this.folder = folder;
    this.findings = findings;
    this.unit = unit;
  }

  /** The publications that a text cites and the unit does not describe, in the order cited. */
  List<Citation> citedIn(Prose text) {
    return text.links().stream()
        .map(Prose.ThingLink::target)
        .distinct()
        .flatMap(id -> find(id).stream())
        .toList();
  }

  boolean has(ThingId id) {
    return find(id).isPresent();
  }

  private Optional<Citation> find(ThingId id) {
    if (id.kind() != Kind.CITATION || unit.find(id).isPresent()) {
      return Optional.empty();
    }
    if (known.isEmpty()) {
      read();
    }
    return Optional.ofNullable(known.get(id));
  }

  private void read() {
    TextFile file = Chapters.sources();
    folder.alsoRead(file);
    SymbolTable program = new SymbolTable();
    Mentions mentions = new Mentions(findings);
    ProseReader prose = new ProseReader(findings, mentions);
    prose.open(file);
    ValueBinder values = new ValueBinder(findings, program, mentions, prose);
    Stream.of(YamlReader.read(file, findings).orElseThrow())
        .map(SourceNode.Sequence.class::cast)
        .flatMap(list -> list.items().stream())
        .forEach(item -> values.bind(Citation.class, item, BindingContext.WHOLE_FILE.item()));
    program
        .whole(Kind.CITATION, Citation.class)
        .forEach(citation -> known.put(citation.id(), citation));
  }
}
