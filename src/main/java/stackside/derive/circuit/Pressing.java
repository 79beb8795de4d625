package stackside.derive.circuit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.chain.Chain;
import stackside.derive.chain.Rating;
import stackside.derive.output.ModeSetting;
import stackside.model.PedalColour;
import stackside.model.Settings;
import stackside.model.SingleFault;
import stackside.model.Tone;

/** Presses the pedals of a set-up and classifies the results. */
record Pressing(SetUp setUp) {

  /** One press for each assigned pedal, with everything right. */
  List<Press> asApproved() {
    return setUp.assigned().stream().map(pedal -> press(pedal, pedal, setUp.state())).toList();
  }

  /** One press for each assigned pedal, with a fault. */
  FaultOutcome outcome(Deviation deviation) {
    CircuitState state = setUp.with(deviation);
    List<Press> presses =
        setUp.assigned().stream()
            .map(pedal -> press(pedal, pressed(pedal, deviation.fault()), state))
            .toList();
    return new FaultOutcome(setUp.room(), setUp.asset(), setUp.profile(), deviation, state, presses);
  }

  private static PedalColour pressed(PedalColour meant, SingleFault fault) {
    if (fault != SingleFault.WRONG_PEDAL) {
      return meant;
    }
    return switch (meant) {
      case YELLOW -> PedalColour.BLUE;
      case BLUE -> PedalColour.YELLOW;
    };
  }

  private Press press(PedalColour intended, PedalColour pressed, CircuitState state) {
    Activation activation = new Activation(state, state.program().pedal(pressed));
    Reach reach = activation.reach(approved(setUp.settings(), intended));
    return new Press(
        intended,
        pressed,
        activation.live(),
        activation.condition(),
        activation.observed(),
        activation.evidence(),
        reach,
        activation.returnPath(),
        strained(activation),
        outcomeClass(activation, reach));
  }

  private static Optional<ModeSetting> approved(Settings settings, PedalColour pedal) {
    return settings.pedal(pedal).setting().map(ModeSetting::of);
  }

  private static OutcomeClass outcomeClass(Activation activation, Reach reach) {
    boolean unintended =
        activation.energised().stream()
            .anyMatch(occupant -> occupant.use() == Occupant.Use.LEFT_IN);
    if (unintended) {
      return OutcomeClass.UNINTENDED_INSTRUMENT_LIVE;
    }
    Observation observed = activation.observed();
    if (observed.tone() == Tone.ALARM && reach == Reach.NOTHING) {
      return OutcomeClass.BLOCKED_WITH_ALARM;
    }
    if (!observed.silent()) {
      return OutcomeClass.NOTICEABLE;
    }
    return switch (reach) {
      case ANOTHER_SETTING, UNKNOWN_SETTING, LESS -> OutcomeClass.SILENT_OTHER_SETTING;
      case NOTHING -> OutcomeClass.SILENT_NO_CURRENT;
      case AS_APPROVED ->
          activation.returnPath() == ReturnPath.PART_OF_NEUTRAL_ELECTRODE
              ? OutcomeClass.SILENT_CROWDED_RETURN
              : OutcomeClass.RIGHT;
    };
  }

  /** Any chain that the room can build might be the one in use, so all of them count. */
  private List<Strained> strained(Activation activation) {
    return activation.meaning().known().stream()
        .flatMap(
            setting ->
                activation.energised().stream()
                    .flatMap(occupant -> strained(occupant, setting).stream()))
        .toList();
  }

  private Optional<Strained> strained(Occupant occupant, ModeSetting setting) {
    return setting
        .mode()
        .peakVoltage()
        .flatMap(byLevel -> byLevel.at(setting.level()))
        .flatMap(
            peak ->
                weakest(occupant)
                    .filter(each -> each.weakest().rated().value().compareTo(peak.value()) < 0)
                    .map(each -> new Strained(each.chain(), each.weakest(), setting, peak)));
  }

  private record Weakest(Chain chain, Rating weakest) {}

  private Optional<Weakest> weakest(Occupant occupant) {
    Stream<Chain> chains =
        setUp.chains().between(occupant.instrument(), occupant.socket()).stream();
    return chains
        .flatMap(chain -> chain.weakest().map(rating -> new Weakest(chain, rating)).stream())
        .min(Comparator.comparing(each -> each.weakest().rated().value()));
  }
}
