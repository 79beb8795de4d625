package stackside.check;

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
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds figures about modes whose description or use does not give the numbers to draw. */
final class FigureWithoutNumbers implements Rule {
  private static final Fault FAULT =
      new Fault(
          "figure-without-numbers", Severity.ERROR, "a figure has no numbers to draw a mode from");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    List<Problem> found = new ArrayList<>();
    for (PlacedFigure placed : analysis.figures()) {
      for (Fact<ThingId> about : placed.figure().about()) {
        Optional<Thing> thing = analysis.unit().find(about.value());
        if (thing.isPresent() && thing.get() instanceof Mode mode) {
          placed.name().flatMap(name -> judge(name, mode, about, analysis)).ifPresent(found::add);
        }
      }
      placed.name().ifPresent(name -> found.addAll(machines(name, placed.figure())));
    }
    return found;
  }

  private static Optional<Problem> judge(
      FigureName name, Mode mode, Fact<ThingId> about, Analysis analysis) {
    return switch (name) {
      case POWER_AGAINST_LOAD -> power(mode, about, analysis);
      case WAVEFORMS -> waveform(mode, about, analysis);
      case CURRENT_DENSITY, STALK_HEATING, FRONT_PANELS -> Optional.empty();
    };
  }

  private static Optional<Problem> power(Mode mode, Fact<ThingId> about, Analysis analysis) {
    if (analysis.unit().anyBroken(Kind.PROFILE)) {
      return Optional.empty();
    }
    return Together.of(analysis.outputs(), List.of(mode)).settings().isEmpty()
        ? Optional.of(
            FAULT
                .at(
                    about.at(),
                    "no answer uses %s at a setting whose output is known"
                        .formatted(Wording.quoted(mode)))
                .help("name a mode that answers use, or take the line out"))
        : Optional.empty();
  }

  private static Optional<Problem> waveform(Mode mode, Fact<ThingId> about, Analysis analysis) {
    return ModeWave.of(mode, analysis.outputs()).isEmpty()
        ? Optional.of(
            FAULT
                .at(about.at(), "%s has no crest factor".formatted(Wording.quoted(mode)))
                .note(mode.at(), "the mode is described here")
                .help("add 'crest-factor' from the manufacturer's instructions"))
        : Optional.empty();
  }

  /** Loads are published machine by machine. */
  private static List<Problem> machines(FigureName name, Prose.Figure figure) {
    long owners =
        figure.about().stream()
            .map(about -> about.value().slug().replaceFirst("/.*", ""))
            .distinct()
            .count();
    return name == FigureName.POWER_AGAINST_LOAD && owners > 1
        ? List.of(
            FAULT
                .at(
                    figure.at(),
                    "figure '%s' is about modes of %d machines".formatted(figure.name(), owners))
                .help("name modes of one machine; write a figure for each"))
        : List.of();
  }
}
