package stackside.check;

import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.Fact;
import stackside.model.Settings;
import stackside.quantity.LitresPerMinute;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Asks about gas flows far from those of published studies, as a slipped decimal point makes them.
 * Source: studies with 1 L/min to 2 L/min, read (Gastrointest Endosc 2011;73:543; Scand J
 * Gastroenterol 2006;41:175; Gastroenterol Clin Biol 2000;24:1205); textbooks with 0.5 L/min for
 * the right colon, from memory. Asked from half the lowest and twice the highest.
 */
final class ArgonFlowFarOff implements Question {
  private static final Fault FAULT =
      new Fault(
          "argon-flow-far-off",
          Severity.WARNING,
          "a gas flow is far from those that published studies used");

  private static final double HALF_THE_LOWEST = 0.25;
  private static final double TWICE_THE_HIGHEST = 4;

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().profiles().stream()
        .filter(profile -> !profile.answers(FAULT.id()))
        .flatMap(profile -> profile.settings().flatMap(Settings::argonFlow).stream())
        .flatMap(flow -> problem(flow).stream())
        .toList();
  }

  private static Optional<Problem> problem(Fact<LitresPerMinute> flow) {
    double value = flow.value().value();
    if (HALF_THE_LOWEST <= value && value <= TWICE_THE_HIGHEST) {
      return Optional.empty();
    }
    String side = value < HALF_THE_LOWEST ? "below" : "above";
    return Optional.of(
        FAULT
            .at(
                flow.at(),
                "argon flow %s is far %s the flows of published studies"
                    .formatted(flow.value(), side))
            .help("look at the decimal point; if the flow is meant, say why under 'because'"));
  }
}
