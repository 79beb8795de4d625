package stackside.derive.circuit;

import java.util.List;
import java.util.Optional;
import stackside.model.Condition;
import stackside.model.Evidence;
import stackside.model.PedalColour;

/**
 * The effect of pressing a pedal.
 *
 * @param intended the pedal that was meant
 * @param pressed the pedal that was pressed
 * @param condition what the machine detects, if anything
 * @param evidence how we know what is observed, if it does not follow from the circuit alone;
 *     unknown counts as silent
 * @param strained parts whose rated voltage may be exceeded by the mode that actually reaches them
 */
public record Press(
    PedalColour intended,
    PedalColour pressed,
    List<LiveSocket> live,
    Optional<Condition> condition,
    Observation observed,
    Optional<Evidence> evidence,
    Reach reach,
    ReturnPath returnPath,
    List<Strained> strained,
    OutcomeClass outcomeClass) {

  public Press {
    live = List.copyOf(live);
    strained = List.copyOf(strained);
  }
}
