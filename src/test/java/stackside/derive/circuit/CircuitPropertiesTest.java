package stackside.derive.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stackside.model.Condition;
import stackside.model.ElectrodeArea;
import stackside.model.Evidence;
import stackside.model.MonitorKind;
import stackside.model.OutputSeen;
import stackside.model.SelectionKind;
import stackside.model.SingleFault;
import stackside.model.Socket;
import stackside.model.Tone;

/** Properties that every circuit must have, tested on many units generated from a fixed seed. */
final class CircuitPropertiesTest {

  static Stream<Bench> units() {
    Random random = new Random(602);
    return IntStream.range(0, 80).mapToObj(i -> unit(random));
  }

  private static Bench unit(Random random) {
    Bench bench =
        Bench.selecting(any(random, SelectionKind.values()))
            .monitor(any(random, MonitorKind.values()), any(random, ElectrodeArea.values()))
            .keeping("snare", "forceps", "tongs", "probe");
    if (random.nextBoolean()) {
      bench.sensingPlugs();
    }
    if (random.nextBoolean()) {
      bench.atPowerOn(any(random, "m1", "m2", "bi", "ar"));
    }
    for (String socket : List.of("m1", "m2", "bi", "ar")) {
      if (random.nextBoolean()) {
        bench.pluggingBringsUp(socket, 1 + random.nextInt(3));
      }
    }
    for (Condition condition : Condition.values()) {
      if (random.nextInt(4) > 0) {
        bench.answering(condition, any(random, Tone.values()), any(random, OutputSeen.values()));
      }
    }
    answer(random, bench);
    if (random.nextBoolean()) {
      bench.reading(2, any(random, "m1", "m2", "bi", "ar"), pedal(random), pedal(random));
    }
    if (random.nextBoolean()) {
      bench.alsoApproving(3, any(random, "m1", "m2"), pedal(random), pedal(random));
    }
    return bench;
  }

  private static void answer(Random random, Bench bench) {
    switch (random.nextInt(3)) {
      case 0 -> bench.approving("snare", any(random, "m1", "m2"), "cut-2-60", "soft-3-40");
      case 1 -> bench.approving("tongs", "bi", "none", "twin-1-30");
      default -> bench.approving("probe", "ar", "none", "plasma-2-40");
    }
  }

  private static String pedal(Random random) {
    return any(random, "none", "cut-2-60", "cut-4-90", "soft-3-40", "spray-1-20", "twin-1-30");
  }

  @SafeVarargs
  private static <T> T any(Random random, T... choices) {
    return choices[random.nextInt(choices.length)];
  }

  private static Stream<Press> presses(Bench bench) {
    return bench.circuits().outcomes().stream().flatMap(outcome -> outcome.presses().stream());
  }

  @ParameterizedTest
  @MethodSource("units")
  void everyFaultHasExactlyOneClass(Bench bench) {
    Circuits circuits = bench.circuits();
    assertThat(circuits.unbuilt()).isEmpty();
    assertThat(circuits.outcomes())
        .allSatisfy(
            outcome ->
                assertThat(outcome.outcomeClass())
                    .isEqualTo(
                        outcome.presses().stream()
                            .map(Press::outcomeClass)
                            .reduce(OutcomeClass::worse)
                            .orElseThrow()));
    assertThat(circuits.outcomes().stream().map(FaultOutcome::fault).distinct())
        .contains(
            SingleFault.INSTRUMENT_CABLE_BROKEN,
            SingleFault.INSTRUMENT_PLUG_LOOSE,
            SingleFault.NEUTRAL_OFF_SKIN,
            SingleFault.FOOT_SWITCH_OUT,
            SingleFault.WRONG_PEDAL,
            SingleFault.MAINS_OFF);
  }

  @ParameterizedTest
  @MethodSource("units")
  void energyReachesAtMostWhatIsConnected(Bench bench) {
    for (FaultOutcome outcome : bench.circuits().outcomes()) {
      for (Press press : outcome.presses()) {
        for (LiveSocket live : press.live()) {
          assertThat(live.occupants()).isEqualTo(outcome.state().in(live.socket()));
          assertThat(live.occupants())
              .allMatch(occupant -> live.socket().takes(occupant.chain().plug()));
        }
        boolean inHandIsLive =
            press.live().stream()
                .flatMap(live -> live.occupants().stream())
                .anyMatch(
                    occupant ->
                        occupant.use() == Occupant.Use.IN_HAND
                            && occupant.integrity() == Occupant.Integrity.WHOLE);
        assertThat(press.reach() == Reach.NOTHING || inHandIsLive).isTrue();
        assertThat(press.strained().stream().allMatch(strained -> isConnected(outcome, strained)))
            .isTrue();
      }
    }
  }

  private static boolean isConnected(FaultOutcome outcome, Strained strained) {
    return outcome.state().occupants().stream()
        .anyMatch(occupant -> occupant.instrument().equals(strained.chain().end()));
  }

  @ParameterizedTest
  @MethodSource("units")
  void withoutMainsOrFootSwitchNothingIsLive(Bench bench) {
    assertThat(bench.circuits().outcomes())
        .filteredOn(
            outcome ->
                outcome.fault() == SingleFault.MAINS_OFF
                    || outcome.fault() == SingleFault.FOOT_SWITCH_OUT)
        .isNotEmpty()
        .allSatisfy(
            outcome -> {
              assertThat(outcome.presses()).allMatch(press -> press.live().isEmpty());
              assertThat(outcome.presses()).allMatch(press -> press.reach() == Reach.NOTHING);
            });
  }

  @ParameterizedTest
  @MethodSource("units")
  void whatIsSilentLooksAndSoundsAsUsual(Bench bench) {
    assertThat(presses(bench))
        .allSatisfy(
            press -> {
              if (press.outcomeClass().silent()
                  && press.outcomeClass() != OutcomeClass.UNINTENDED_INSTRUMENT_LIVE) {
                assertThat(press.observed().silent()).isTrue();
                assertThat(press.outcomeClass()).isNotEqualTo(OutcomeClass.RIGHT);
              }
              if (press.outcomeClass() == OutcomeClass.BLOCKED_WITH_ALARM) {
                assertThat(press.observed().tone()).isEqualTo(Tone.ALARM);
                assertThat(press.reach()).isEqualTo(Reach.NOTHING);
              }
              if (press.outcomeClass() == OutcomeClass.RIGHT) {
                assertThat(press.reach()).isEqualTo(Reach.AS_APPROVED);
                assertThat(press.observed().silent()).isTrue();
              }
            });
  }

  @ParameterizedTest
  @MethodSource("units")
  void anUnknownAnswerIsNeverTakenToWarn(Bench bench) {
    assertThat(presses(bench))
        .filteredOn(
            press ->
                press.evidence().stream()
                    .anyMatch(evidence -> evidence.basis() == Evidence.Basis.UNKNOWN))
        .allMatch(press -> press.outcomeClass().silent() || press.reach() == Reach.AS_APPROVED);
  }

  /** If nothing is wrong and current can flow, the outcome is what was approved. */
  @ParameterizedTest
  @MethodSource("units")
  void withEverythingRightEverythingIsRight(Bench bench) {
    boolean fixedElsewhere =
        bench.unit().machines().get(0).selectsSocket().value() == SelectionKind.FIXED;
    List<Press> presses = bench.asApproved();
    if (!fixedElsewhere) {
      assertThat(presses).allMatch(press -> press.outcomeClass() == OutcomeClass.RIGHT);
    }
  }

  @ParameterizedTest
  @MethodSource("units")
  void whatIsSelectedIsASocketOfTheMachine(Bench bench) {
    List<Socket> sockets = bench.unit().machines().get(0).sockets();
    assertThat(bench.circuits().outcomes())
        .allSatisfy(
            outcome ->
                assertThat(outcome.state().selected().stream().allMatch(sockets::contains))
                    .isTrue());
  }
}
