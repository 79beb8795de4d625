package stackside.check;

import java.util.ArrayList;
import java.util.List;
import stackside.derive.Analysis;
import stackside.model.FootSwitch;
import stackside.model.Pedal;
import stackside.model.PedalAction;
import stackside.model.PedalColour;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Tells of foot switches whose colours differ from the standard's. Source: IEC 60601-2-2, clause on
 * indicator colours, read in an adoption of an older edition: yellow for cutting, blue for
 * coagulation.
 */
final class PedalColourUnusual implements Rule {
  private static final Fault FAULT =
      new Fault(
          "pedal-colour-unusual",
          Severity.NOTE,
          "a foot switch has other colours than IEC 60601-2-2");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    List<Problem> found = new ArrayList<>();
    for (FootSwitch footSwitch : analysis.unit().footSwitches()) {
      footSwitch.pedals().stream()
          .filter(pedal -> pedal.does().value() != usual(pedal.colour().value()))
          .findFirst()
          .ifPresent(pedal -> found.add(problem(footSwitch, pedal)));
    }
    return found;
  }

  private static PedalAction usual(PedalColour colour) {
    return switch (colour) {
      case YELLOW -> PedalAction.CUT;
      case BLUE -> PedalAction.COAGULATION;
    };
  }

  private static Problem problem(FootSwitch footSwitch, Pedal pedal) {
    return FAULT
        .at(
            pedal.colour().at(),
            "the %s pedal of %s is for %s; IEC 60601-2-2 has yellow for cutting and blue for coagulation"
                .formatted(
                    pedal.colour().value().word(),
                    Wording.quoted(footSwitch),
                    Wording.doing(pedal.does().value())))
        .help("look at the foot switch itself; if it is so, nothing needs to change");
  }
}
