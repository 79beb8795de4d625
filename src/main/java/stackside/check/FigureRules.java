package stackside.check;

import static stackside.check.Rule.error;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.derive.figure.FigureName;
import stackside.derive.figure.ModeWave;
import stackside.derive.figure.PlacedFigure;
import stackside.derive.output.Together;
import stackside.model.Fact;
import stackside.model.Kind;
import stackside.model.Mode;
import stackside.model.Prose;
import stackside.model.Thing;
import stackside.model.ThingId;

/** Figures that the handbook asks for. */
final class FigureRules {

  private FigureRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "figure-unknown",
            "a text asks for a figure that does not exist",
            FigureRules::figureUnknown),
        error(
            "figure-about-wrong",
            "a figure names nothing, or something that it cannot show",
            FigureRules::figureAboutWrong),
        error(
            "figure-without-numbers",
            "a figure lacks the numbers to draw a mode",
            FigureRules::figureWithoutNumbers),
        error(
            "figure-out-of-place",
            "a figure is where none can be drawn",
            FigureRules::figureOutOfPlace));
  }

  private static List<Finding> figureUnknown(CheckedUnit checked) {
    return checked.analysis().figures().stream()
        .filter(placed -> placed.name().isEmpty())
        .map(
            placed ->
                Finding.at(
                        placed.figure().at(),
                        "there is no figure '%s'".formatted(placed.figure().name()))
                    .help("write one of " + Wording.list(FigureName.words())))
        .toList();
  }

  private static List<Finding> figureAboutWrong(CheckedUnit checked) {
    List<Finding> found = new ArrayList<>();
    checked
        .analysis()
        .figures()
        .forEach(
            placed ->
                placed
                    .name()
                    .ifPresent(name -> figureAboutWrong(placed.figure(), name.about(), found)));
    return found;
  }

  private static void figureAboutWrong(
      Prose.Figure figure, Optional<Kind> kind, List<Finding> found) {
    if (kind.isPresent() && figure.about().isEmpty()) {
      String spoken = kind.get().spoken();
      found.add(
          Finding.at(figure.at(), "figure '%s' names no %s".formatted(figure.name(), spoken))
              .help("name each %s on a line of its own below it".formatted(spoken)));
    }
    List<ThingId> named = new ArrayList<>();
    for (Fact<ThingId> about : figure.about()) {
      figureAboutWrong(figure, kind, about, named).ifPresent(found::add);
      named.add(about.value());
    }
  }

  private static Optional<Finding> figureAboutWrong(
      Prose.Figure figure, Optional<Kind> kind, Fact<ThingId> about, List<ThingId> named) {
    if (kind.stream().noneMatch(about.value().kind()::equals)) {
      return Optional.of(
          Finding.at(
                  about.at(),
                  "figure '%s' cannot show '%s'".formatted(figure.name(), about.value()))
              .help(
                  kind.map(each -> "it shows only things of the kind '%s'".formatted(each.word()))
                      .orElse("it is the same everywhere: name nothing below it")));
    }
    return named.contains(about.value())
        ? Optional.of(
            Finding.at(
                    about.at(),
                    "figure '%s' names '%s' twice".formatted(figure.name(), about.value()))
                .help("remove one of the two"))
        : Optional.empty();
  }

  private static List<Finding> figureWithoutNumbers(CheckedUnit checked) {
    List<Finding> found = new ArrayList<>();
    for (PlacedFigure placed : checked.analysis().figures()) {
      for (Fact<ThingId> about : placed.figure().about()) {
        Optional<Thing> thing = checked.unit().find(about.value());
        if (thing.isPresent() && thing.get() instanceof Mode mode) {
          placed
              .name()
              .flatMap(name -> figureWithoutNumbers(name, mode, about, checked.analysis()))
              .ifPresent(found::add);
        }
      }
      placed.name().ifPresent(name -> found.addAll(machines(name, placed.figure())));
    }
    return found;
  }

  private static Optional<Finding> figureWithoutNumbers(
      FigureName name, Mode mode, Fact<ThingId> about, Analysis analysis) {
    return switch (name) {
      case POWER_AGAINST_LOAD -> power(mode, about, analysis);
      case WAVEFORMS -> waveform(mode, about, analysis);
      default -> Optional.empty();
    };
  }

  private static Optional<Finding> power(Mode mode, Fact<ThingId> about, Analysis analysis) {
    if (analysis.unit().anyBroken(Kind.PROFILE)) {
      return Optional.empty();
    }
    return Together.of(analysis.outputs(), List.of(mode)).settings().isEmpty()
        ? Optional.of(
            Finding.at(
                    about.at(),
                    "no answer uses %s at a setting whose output is known"
                        .formatted(Wording.quoted(mode)))
                .help("name a mode that answers use, or remove the line"))
        : Optional.empty();
  }

  private static Optional<Finding> waveform(Mode mode, Fact<ThingId> about, Analysis analysis) {
    return ModeWave.of(mode, analysis.outputs()).isEmpty()
        ? Optional.of(
            Finding.at(about.at(), "%s has no crest factor".formatted(Wording.quoted(mode)))
                .note(mode.at(), "the mode is described here")
                .help("add 'crest-factor' from the manufacturer's instructions"))
        : Optional.empty();
  }

  /** Loads are published machine by machine. */
  private static List<Finding> machines(FigureName name, Prose.Figure figure) {
    long owners =
        figure.about().stream()
            .map(about -> about.value().slug().replaceFirst("/.*", ""))
            .distinct()
            .count();
    return name == FigureName.POWER_AGAINST_LOAD && owners > 1
        ? List.of(
            Finding.at(
                    figure.at(),
                    "figure '%s' names modes of %d machines".formatted(figure.name(), owners))
                .help("name modes of one machine only; use a figure for each machine"))
        : List.of();
  }

  private static List<Finding> figureOutOfPlace(CheckedUnit checked) {
    return checked.analysis().figures().stream()
        .filter(placed -> placed.place() == PlacedFigure.Place.ELSEWHERE)
        .filter(placed -> placed.name().isPresent())
        .map(
            placed ->
                Finding.at(
                        placed.figure().at(),
                        "figure '%s' cannot be drawn here".formatted(placed.figure().name()))
                    .help("put it between two paragraphs of a handbook page, not in a list"))
        .toList();
  }
}
