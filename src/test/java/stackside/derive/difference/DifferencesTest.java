package stackside.derive.difference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stackside.Units;
import stackside.derive.Edited;
import stackside.derive.circuit.Circuits;
import stackside.derive.circuit.OutcomeClass;
import stackside.derive.coverage.Coverage;
import stackside.model.Condition;
import stackside.model.MonitorKind;
import stackside.model.SelectionKind;
import stackside.model.SingleFault;
import stackside.model.Unit;

final class DifferencesTest {

  /** A second room with the same generator and a different answer to the same questions. */
  private static final String TWIN_ROOM =
      """
      === assets.csv
      +EQ-3,arrowgrass,2.3,in use,2025-01-10
      === rooms/room-3.yaml
      +id: room-3
      +name: Room 3
      +location: culvert
      +assets: [EQ-3]
      +foot-switches: [twin]
      +patients: [adult, child]
      +keeps:
      +  instruments: [snare, grasper]
      +  cables: [snare-cable]
      +  neutral-electrodes: [split-adult]
      +offers:
      +  - {lesions: [flat-small, flat-large, angiodysplasia], sites: [colon]}
      +copies: 1
      """;

  private static Differences between(Unit unit, int from, int to) {
    List<RoomAtAsset> places = Differences.places(unit);
    return Differences.between(
        unit, Coverage.of(unit), Circuits.of(unit), places.get(from), places.get(to));
  }

  private static <T extends Difference> Stream<T> of(Differences differences, Class<T> type) {
    return differences.all().stream().filter(type::isInstance).map(type::cast);
  }

  @Test
  void theSameGeneratorWithTheSameKitIsNoDifferent() {
    assertThat(between(Edited.base(TWIN_ROOM), 0, 2).all()).isEmpty();
  }

  @Test
  void theMostDangerousFirst() {
    Differences differences = between(Edited.base(""), 0, 1);
    assertThat(differences.all()).extracting(Difference::rank).isSorted();
    assertThat(differences.ranked(Rank.SILENT)).isNotEmpty();
    assertThat(differences.ranked(Rank.LABEL)).isNotEmpty();
    assertThat(differences.from().room().id().slug()).isEqualTo("room-1");
  }

  @Test
  void selectionAndMonitorBothWays() {
    Differences there = between(Edited.base(""), 0, 1);
    assertThat(of(there, Difference.SelectionChanged.class))
        .containsExactly(
            new Difference.SelectionChanged(
                SelectionKind.BY_PROGRAM, SelectionKind.BY_PLUGGING_IN));
    assertThat(of(there, Difference.MonitorChanged.class))
        .singleElement()
        .satisfies(
            watched -> {
              assertThat(watched.to()).isEqualTo(MonitorKind.CONTINUITY);
              assertThat(watched.rank()).isEqualTo(Rank.SILENT);
            });
    assertThat(of(between(Edited.base(""), 1, 0), Difference.MonitorChanged.class))
        .singleElement()
        .satisfies(watched -> assertThat(watched.rank()).isEqualTo(Rank.ALARM));
  }

  @Test
  void whatWasAlarmedAndIsSilentNowIsWorst() {
    Difference.FaultOutcomeChanged partly =
        of(between(Edited.base(""), 0, 1), Difference.FaultOutcomeChanged.class)
            .filter(each -> each.fault() == SingleFault.NEUTRAL_PARTLY_OFF)
            .findFirst()
            .orElseThrow();
    assertThat(partly.from()).isEqualTo(OutcomeClass.BLOCKED_WITH_ALARM);
    assertThat(partly.to()).isEqualTo(OutcomeClass.SILENT_CROWDED_RETURN);
    assertThat(partly.rank()).isEqualTo(Rank.SILENT);
    assertThat(partly.fromSigns()).isNotEmpty();
    assertThat(partly.toSigns()).allMatch(sign -> sign.fault() == SingleFault.NEUTRAL_PARTLY_OFF);
    Difference.FaultOutcomeChanged back =
        of(between(Edited.base(""), 1, 0), Difference.FaultOutcomeChanged.class)
            .filter(each -> each.fault() == SingleFault.NEUTRAL_PARTLY_OFF)
            .findFirst()
            .orElseThrow();
    assertThat(back.rank()).isEqualTo(Rank.ALARM);
  }

  @Test
  void pedalsThatLieElsewiseAreSilent() {
    Unit swapped =
        Edited.base(
            TWIN_ROOM.replace("foot-switches: [twin]", "foot-switches: [mirrored]")
                + """
                === foot-switches.yaml
                +- {id: mirrored, name: Mirrored, pedals: [{colour: blue, does: coagulation}, {colour: yellow, does: cut}]}
                === machines/arrowgrass.yaml
                -foot-switches: [twin]
                +foot-switches: [twin, mirrored]
                """);
    assertThat(of(between(swapped, 0, 2), Difference.OtherPedals.class))
        .singleElement()
        .satisfies(
            pedals -> {
              assertThat(pedals.to().id().slug()).isEqualTo("mirrored");
              assertThat(pedals.rank()).isEqualTo(Rank.SILENT);
            });
  }

  @Test
  void theSameProgramForFewerLesionsMeansTheSame() {
    Unit unit =
        Edited.base(
            TWIN_ROOM.replace(
                "{lesions: [flat-small, flat-large, angiodysplasia], sites: [colon]}",
                "{lesions: [flat-small, flat-large], sites: [rectum]}"));
    assertThat(of(between(unit, 0, 2), Difference.ProgramMeaningChanged.class)).isEmpty();
  }

  @Test
  void aProgramNumberThatMeansSomethingElse() {
    Unit unit =
        Edited.base(
            """
            === profiles/birch.yaml
            -      program: {slot: 2, shown-as: "Gas"}
            +      program: {slot: 3, shown-as: "Gas"}
            === machines/birch.yaml
            -programs: 1 to 2
            +programs: 1 to 3
            """);
    assertThat(of(between(unit, 0, 1), Difference.ProgramMeaningChanged.class))
        .singleElement()
        .satisfies(
            program -> {
              assertThat(program.from().shownAs()).isEqualTo("EMR R");
              assertThat(program.to().shownAs()).isEqualTo("Gas");
            });
    assertThat(of(between(Edited.base(""), 0, 1), Difference.ProgramMeaningChanged.class)).isEmpty();
  }

  @Test
  void anAnswerOfAnotherKind() {
    Unit unit =
        Edited.base(
            """
            === profiles/birch.yaml
            -    settings:
            -      program: {slot: 2, shown-as: "Gas"}
            -      instrument: argon-probe
            -      socket: gas
            -      yellow: unassigned
            -      blue: {mode: argon, level: 2}
            -      neutral-electrode: plain-adult
            -      argon-flow: 0.8 L/min
            +    not-approved: In Room 1.
            +    ask: lead-endoscopist
            """);
    assertThat(of(between(unit, 0, 1), Difference.AnswerOfOtherKind.class))
        .hasSize(2)
        .allMatch(each -> each.from().lesion().id().slug().equals("angiodysplasia"));
    assertThat(of(between(Edited.base(""), 0, 1), Difference.AnswerOfOtherKind.class)).isEmpty();
  }

  @Test
  void answersToConditionsAndWhatIsKept() {
    Differences differences = between(Edited.base(""), 0, 1);
    assertThat(of(differences, Difference.ResponseChanged.class))
        .extracting(Difference.ResponseChanged::condition)
        .contains(Condition.SELECTED_SOCKET_EMPTY, Condition.ARGON_EMPTY, Condition.MAINS_OFF);
    assertThat(
            of(differences, Difference.KeptInOneOnly.class)
                .map(kept -> kept.accessory().id().slug() + " " + kept.side()))
        .containsExactlyInAnyOrder(
            "snare FROM",
            "grasper FROM",
            "snare-cable FROM",
            "split-adult FROM",
            "argon-probe TO",
            "argon-line TO",
            "plain-adult TO");
  }

  @Test
  void theSameInstrumentInASocketOfAnotherLabel() {
    Unit unit =
        Edited.base(
            """
            === cables.yaml
            +- {id: round-cable, name: Round cable, plug: round-pin, connector: pin-3, rated-voltage: 4000 V peak}
            === rooms/room-2.yaml
            -  instruments: [argon-probe]
            +  instruments: [argon-probe, snare]
            === rooms/room-2.yaml
            -  cables: [argon-line]
            +  cables: [argon-line, round-cable]
            === rooms/room-2.yaml
            -  - {lesions: [angiodysplasia], sites: [colon]}
            +  - {lesions: [angiodysplasia, flat-large], sites: [colon]}
            === profiles/birch.yaml
            +  - id: birch-large
            +    lesions: [flat-large]
            +    sites: [colon]
            +    step: resection
            +    settings:
            +      instrument: snare
            +      socket: snare
            +      yellow: unassigned
            +      blue: {mode: soft, limit: 80 W}
            +      neutral-electrode: plain-adult
            """);
    assertThat(of(between(unit, 0, 1), Difference.OtherSocket.class))
        .singleElement()
        .satisfies(
            socket -> {
              assertThat(socket.instrument().id().slug()).isEqualTo("snare");
              assertThat(socket.from().get(0).label().value()).isEqualTo("1");
              assertThat(socket.to().get(0).label().value()).isEqualTo("A");
              assertThat(socket.rank()).isEqualTo(Rank.LABEL);
            });
  }

  @Test
  void theSameTaskThatIsCalledAndSetOtherwise() {
    Unit unit = Units.demonstration();
    Differences there = between(unit, "room-2", "room-1");
    assertThat(of(there, Difference.OtherSetting.class))
        .isNotEmpty()
        .allSatisfy(
            setting -> {
              assertThat(setting.from().machine().value()).isEqualTo(there.from().machine());
              assertThat(setting.to().machine().value()).isEqualTo(there.to().machine());
              assertThat(setting.from().step().value()).isEqualTo(setting.to().step().value());
            });
    assertThat(of(between(unit, "room-2", "room-2"), Difference.OtherSetting.class)).isEmpty();
  }

  @Test
  void whomToCallAndWhereSparesLie() {
    Unit unit = Units.demonstration();
    Differences away = between(unit, "room-2", "room-a");
    assertThat(of(away, Difference.OtherContacts.class))
        .singleElement()
        .satisfies(contacts -> assertThat(contacts.to().title()).isEqualTo("Spartina Hospital"));
    assertThat(of(away, Difference.SparesElsewhere.class))
        .containsExactly(
            new Difference.SparesElsewhere("left drawer of the stack", "basket under the stack"));
    assertThat(of(between(unit, "room-2", "room-1"), Difference.OtherContacts.class)).isEmpty();
  }

  private static Differences between(Unit unit, String from, String to) {
    return Differences.between(
        unit, Coverage.of(unit), Circuits.of(unit), place(unit, from), place(unit, to));
  }

  private static RoomAtAsset place(Unit unit, String room) {
    return Differences.places(unit).stream()
        .filter(place -> place.room().id().slug().equals(room))
        .findFirst()
        .orElseThrow();
  }
}
