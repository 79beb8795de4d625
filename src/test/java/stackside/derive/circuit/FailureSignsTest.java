package stackside.derive.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static stackside.model.SingleFault.INSTRUMENT_CABLE_BROKEN;
import static stackside.model.SingleFault.INSTRUMENT_IN_WRONG_SOCKET;
import static stackside.model.SingleFault.INSTRUMENT_PLUG_LOOSE;
import static stackside.model.SingleFault.NEUTRAL_CABLE_OUT;
import static stackside.model.SingleFault.NEUTRAL_OFF_SKIN;
import static stackside.model.SingleFault.OTHER_INSTRUMENT_LEFT_IN;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stackside.derive.Edited;
import stackside.model.Asset;
import stackside.model.ChecklistKind;
import stackside.model.Condition;
import stackside.model.Evidence;
import stackside.model.LampId;
import stackside.model.OutputSeen;
import stackside.model.Room;
import stackside.model.SelectionKind;
import stackside.model.Sign;
import stackside.model.SingleFault;
import stackside.model.Tone;
import stackside.model.Unit;

final class FailureSignsTest {
  private static final LampId LAMP = new LampId("plate-lamp");
  private static final Sign NO_EFFECT =
      Bench.sign(Optional.of(Tone.USUAL), Map.of(LAMP, "green"), Optional.empty());
  private static final Sign PLATE =
      Bench.sign(Optional.of(Tone.ALARM), Map.of(LAMP, "red"), Optional.empty());

  private static Bench bench() {
    return Bench.selecting(SelectionKind.BY_PROGRAM)
        .keeping("snare", "forceps")
        .answering(
            Condition.INSTRUMENT_CIRCUIT_OPEN,
            Tone.USUAL,
            OutputSeen.NONE,
            Map.of(LAMP, "green"),
            Optional.empty(),
            Evidence.Basis.OBSERVED)
        .answering(
            Condition.NEUTRAL_CIRCUIT_OPEN,
            Tone.ALARM,
            OutputSeen.NONE,
            Map.of(LAMP, "red"),
            Optional.of("Plate"),
            Evidence.Basis.OBSERVED);
  }

  private static FailureSign line(Circuits circuits, SingleFault fault) {
    return circuits.signs().stream()
        .filter(sign -> sign.fault() == fault)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void worstFirstThenInTheOrderOfTheFaults() {
    List<FailureSign> signs = bench().circuits().signs();
    assertThat(signs).extracting(FailureSign::outcomeClass).isSorted();
    assertThat(
            signs.stream()
                .filter(sign -> sign.outcomeClass() == OutcomeClass.SILENT_NO_CURRENT)
                .map(FailureSign::fault))
        .isSorted();
    assertThat(signs.get(0).fault()).isEqualTo(OTHER_INSTRUMENT_LEFT_IN);
  }

  @Test
  void everyOutcomeStandsInExactlyOneLineOfItsClass() {
    Circuits circuits = bench().circuits();
    List<FaultOutcome> summed =
        circuits.signs().stream().flatMap(sign -> sign.outcomes().stream()).toList();
    assertThat(summed).containsExactlyInAnyOrderElementsOf(circuits.outcomes());
    assertThat(circuits.signs())
        .allSatisfy(
            sign ->
                assertThat(sign.outcomes())
                    .allMatch(outcome -> outcome.outcomeClass() == sign.outcomeClass())
                    .allMatch(outcome -> outcome.fault() == sign.fault()));
  }

  @Test
  void aLineSaysWhatIsSeenAndWhy() {
    FailureSign line = line(bench().circuits(), INSTRUMENT_IN_WRONG_SOCKET);
    assertThat(line.observed().lamps()).containsEntry(LAMP, "green");
    assertThat(line.condition()).contains(Condition.INSTRUMENT_CIRCUIT_OPEN);
    assertThat(line.evidence()).contains(Evidence.Basis.OBSERVED);
    assertThat(line.reach()).isEqualTo(Reach.NOTHING);
    assertThat(line.returnPath()).isEqualTo(ReturnPath.NONE);
    assertThat(line.tissue()).isEqualTo(Tissue.NO_EFFECT);
    assertThat(line.item()).isEqualTo(Item.INSTRUMENT);
    assertThat(line.machine().id().slug()).isEqualTo("bench");
  }

  @Test
  void onlySetUpStepsThatNameTheFaultGuardIt() {
    Circuits circuits =
        bench()
            .guarding(ChecklistKind.TIME_OUT, INSTRUMENT_IN_WRONG_SOCKET)
            .guarding(ChecklistKind.SET_UP, NEUTRAL_OFF_SKIN)
            .guarding(ChecklistKind.SET_UP, INSTRUMENT_IN_WRONG_SOCKET, INSTRUMENT_PLUG_LOOSE)
            .circuits();
    assertThat(line(circuits, INSTRUMENT_IN_WRONG_SOCKET).guards())
        .singleElement()
        .satisfies(guard -> assertThat(guard.checklist().id().slug()).isEqualTo("list-2"));
    assertThat(line(circuits, INSTRUMENT_CABLE_BROKEN).guards()).isEmpty();
  }

  @Test
  void drillsThatMendStandBeforeThoseWithAnotherSign() {
    Circuits circuits =
        bench()
            .mending("plate", PLATE, NEUTRAL_CABLE_OUT, INSTRUMENT_IN_WRONG_SOCKET)
            .mending("no-effect", NO_EFFECT, INSTRUMENT_IN_WRONG_SOCKET)
            .circuits();
    FailureSign line = line(circuits, INSTRUMENT_IN_WRONG_SOCKET);
    assertThat(line.drills())
        .extracting(mending -> mending.drill().id().slug())
        .containsExactly("no-effect", "plate");
    assertThat(line.drills().get(0).fits()).isTrue();
    assertThat(line.drills().get(1).fits()).isFalse();
    assertThat(line.drills().get(1).checks()).hasSize(1);
    assertThat(line.fitting()).extracting(drill -> drill.id().slug()).containsExactly("no-effect");
    assertThat(line(circuits, INSTRUMENT_CABLE_BROKEN).drills()).isEmpty();
  }

  @Test
  void faultsThatLookAlikeAreGrouped() {
    Circuits circuits =
        bench()
            .mending("no-effect", NO_EFFECT, INSTRUMENT_IN_WRONG_SOCKET, INSTRUMENT_PLUG_LOOSE)
            .mending(
                "all",
                NO_EFFECT,
                INSTRUMENT_IN_WRONG_SOCKET,
                INSTRUMENT_PLUG_LOOSE,
                INSTRUMENT_CABLE_BROKEN)
            .circuits();
    SharedSign shared =
        circuits.shared().stream()
            .filter(each -> each.observed().lamps().containsValue("green"))
            .findFirst()
            .orElseThrow();
    assertThat(shared.faults())
        .containsExactly(
            INSTRUMENT_IN_WRONG_SOCKET, INSTRUMENT_PLUG_LOOSE, INSTRUMENT_CABLE_BROKEN);
    assertThat(shared.tissue()).isEqualTo(Tissue.NO_EFFECT);
    assertThat(shared.drills()).hasSize(2);
    assertThat(shared.leftOpenBy(shared.drills().get(0))).containsExactly(INSTRUMENT_CABLE_BROKEN);
    assertThat(shared.shared()).extracting(drill -> drill.id().slug()).containsExactly("all");
  }

  @Test
  void whatComesToNothingHasNoSharedSign() {
    Circuits circuits = bench().circuits();
    assertThat(circuits.signs()).anyMatch(sign -> sign.outcomeClass() == OutcomeClass.RIGHT);
    assertThat(circuits.shared())
        .allSatisfy(
            shared ->
                assertThat(shared.lines())
                    .noneMatch(line -> line.outcomeClass() == OutcomeClass.RIGHT));
    assertThat(circuits.shared()).doesNotHaveDuplicates();
  }

  @Test
  void signsAndOutcomesAreFoundByPlaceAndProfile() {
    Bench bench = bench();
    Circuits circuits = bench.circuits();
    var unit = bench.unit();
    assertThat(circuits.signsIn(unit.rooms().get(0), unit.assets().get(0)))
        .isEqualTo(circuits.signs());
    assertThat(circuits.outcomesOf(unit.profiles().get(0), unit.rooms().get(0)))
        .isEqualTo(circuits.outcomes());
    assertThat(circuits.wrongSockets(unit.profiles().get(0), unit.rooms().get(0)))
        .singleElement()
        .satisfies(outcome -> assertThat(outcome.fault()).isEqualTo(INSTRUMENT_IN_WRONG_SOCKET));
    Bench other = bench().alsoApproving(2, "m1", "cut-1-30", "soft-1-30");
    assertThat(circuits.outcomesOf(other.unit().profiles().get(1), unit.rooms().get(0))).isEmpty();
  }

  @Test
  void signsOfOnePlaceLeaveOtherPlacesOut() {
    Unit unit = Edited.base("");
    Circuits circuits = Circuits.of(unit);
    Room first = unit.rooms().get(0);
    Room second = unit.rooms().get(1);
    Asset own = unit.assets().get(0);
    assertThat(circuits.signsIn(first, own))
        .isNotEmpty()
        .hasSizeLessThan(circuits.signs().size())
        .allMatch(sign -> sign.room().equals(first) && sign.asset().equals(own));
    assertThat(circuits.signsIn(second, own)).isEmpty();
    assertThat(circuits.signsIn(first, unit.assets().get(1))).isEmpty();
    assertThat(circuits.outcomesOf(unit.profiles().get(0), second)).isEmpty();
    assertThat(circuits.outcomesOf(unit.profiles().get(0), first)).isNotEmpty();
  }

  @Test
  void anAnswerWhoseInstrumentReachesNoSocketIsUnbuilt() {
    Circuits circuits =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .keeping("orphan")
            .approving("orphan", "m1", "cut-2-60", "none")
            .circuits();
    assertThat(circuits.outcomes()).isEmpty();
    assertThat(circuits.unbuilt())
        .singleElement()
        .satisfies(unbuilt -> assertThat(unbuilt.profile().id().slug()).isEqualTo("main"));
  }

  @Test
  void anAnswerWithoutAnAssignedPedalHasNothingToPress() {
    Circuits circuits =
        Bench.selecting(SelectionKind.BY_PROGRAM)
            .approving("snare", "m1", "none", "none")
            .circuits();
    assertThat(circuits.outcomes()).isEmpty();
    assertThat(circuits.unbuilt()).isEmpty();
  }
}
