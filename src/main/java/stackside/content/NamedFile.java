package stackside.content;

import java.util.Optional;
import stackside.model.Broken;
import stackside.model.Kind;
import stackside.model.ThingId;
import stackside.source.Location;
import stackside.source.Problem;

/** A file that holds one thing and is named after its id. */
record NamedFile(String name, Kind kind, Optional<SourceNode> content) {

  /** The id that a file's name stands for. */
  static Optional<ThingId> id(String name, Kind kind, Findings findings) {
    String stem = TextFile.of(name, "").stem();
    if (ThingId.isId(kind, stem)) {
      return Optional.of(new ThingId(kind, stem));
    }
    findings.add(
        ReadingFaults.NOT_AN_ID
            .at(
                Location.startOf(name),
                Quote.of(stem)
                    + " is not the id of "
                    + References.withArticle(References.noun(kind)))
            .help("name the file with small letters and digits, with single hyphens between"));
    return Optional.empty();
  }

  /**
   * Compares the id in the file with the file's name. If they differ, nobody knows which of them
   * others mean, so the thing is broken under both.
   *
   * @param mark where the findings of this file begin
   */
  void compare(SymbolTable scope, Findings findings, int mark) {
    String stem = TextFile.of(name, "").stem();
    Optional<SourceNode.Scalar> inside = idInside();
    String written = inside.map(id -> id.text().strip()).orElse("");
    if (written.equals(stem)) {
      return;
    }
    if (ThingId.isId(kind, written)) {
      Problem problem =
          ReadingFaults.FILE_NAME_DIFFERS
              .at(
                  inside.orElseThrow().at(),
                  "the id is " + Quote.of(written) + " and the file is named " + Quote.of(stem))
              .help("give the file and the id the same name");
      findings.add(problem);
      scope
          .find(new ThingId(kind, written))
          .filter(thing -> thing.at().file().equals(name))
          .ifPresent(thing -> breakAlso(scope, findings, mark, thing.id()));
    }
    if (ThingId.isId(kind, stem) && scope.find(new ThingId(kind, stem)).isEmpty()) {
      breakAlso(scope, findings, mark, new ThingId(kind, stem));
    }
  }

  private void breakAlso(SymbolTable scope, Findings findings, int mark, ThingId id) {
    scope.put(new Broken(id, Location.startOf(name), findings.errorsSince(mark)));
  }

  private Optional<SourceNode.Scalar> idInside() {
    return content.stream()
        .filter(SourceNode.Mapping.class::isInstance)
        .flatMap(piece -> ((SourceNode.Mapping) piece).entries().stream())
        .filter(entry -> entry.key().text().equals("id"))
        .map(SourceNode.Entry::value)
        .filter(SourceNode.Scalar.class::isInstance)
        .map(SourceNode.Scalar.class::cast)
        .findFirst();
  }
}
