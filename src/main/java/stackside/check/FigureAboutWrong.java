package stackside.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.Kind;
import stackside.model.Prose;
import stackside.model.ThingId;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds figures that name nothing to show, things of another kind, or a thing twice. */
final class FigureAboutWrong implements Rule {
  private static final Fault FAULT =
      new Fault("figure-about-wrong", Severity.ERROR, "a figure is not about what it can show");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    List<Problem> found = new ArrayList<>();
    analysis
        .figures()
        .forEach(
            placed -> placed.name().ifPresent(name -> judge(placed.figure(), name.about(), found)));
    return found;
  }

  private static void judge(Prose.Figure figure, Optional<Kind> kind, List<Problem> found) {
    if (kind.isPresent() && figure.about().isEmpty()) {
      String spoken = kind.get().spoken();
      found.add(
          FAULT
              .at(figure.at(), "figure '%s' names no %s".formatted(figure.name(), spoken))
              .help("name each %s on a line of its own below it".formatted(spoken)));
    }
    List<ThingId> named = new ArrayList<>();
    for (Fact<ThingId> about : figure.about()) {
      judge(figure, kind, about, named).ifPresent(found::add);
      named.add(about.value());
    }
  }

  private static Optional<Problem> judge(
      Prose.Figure figure, Optional<Kind> kind, Fact<ThingId> about, List<ThingId> named) {
    if (kind.stream().noneMatch(about.value().kind()::equals)) {
      return Optional.of(
          FAULT
              .at(
                  about.at(),
                  "figure '%s' cannot show '%s'".formatted(figure.name(), about.value()))
              .help(
                  kind.map(each -> "it shows things of the kind '%s'".formatted(each.word()))
                      .orElse("it shows the same everywhere and names nothing")));
    }
    return named.contains(about.value())
        ? Optional.of(
            FAULT
                .at(
                    about.at(),
                    "figure '%s' names '%s' twice".formatted(figure.name(), about.value()))
                .help("take one of the two out"))
        : Optional.empty();
  }
}
