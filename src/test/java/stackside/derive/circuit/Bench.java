package stackside.derive.circuit;

import java.net.URI;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.program.Readings;
import stackside.model.AppliesTo;
import stackside.model.Asset;
import stackside.model.AssetStatus;
import stackside.model.ByLevel;
import stackside.model.Cable;
import stackside.model.Checklist;
import stackside.model.ChecklistKind;
import stackside.model.ChecklistStep;
import stackside.model.Condition;
import stackside.model.ConnectorId;
import stackside.model.CrestFactor;
import stackside.model.CurrentType;
import stackside.model.Drill;
import stackside.model.DrillCheck;
import stackside.model.Electrode;
import stackside.model.ElectrodeArea;
import stackside.model.EnergyKind;
import stackside.model.Evidence;
import stackside.model.Fact;
import stackside.model.FootSwitch;
import stackside.model.Initials;
import stackside.model.Instrument;
import stackside.model.Kind;
import stackside.model.Lamp;
import stackside.model.LampId;
import stackside.model.Lesion;
import stackside.model.Level;
import stackside.model.LevelScale;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.model.MonitorKind;
import stackside.model.Offer;
import stackside.model.OutputCheckPolicy;
import stackside.model.OutputSeen;
import stackside.model.PanelPlace;
import stackside.model.PatientGroup;
import stackside.model.Pedal;
import stackside.model.PedalAction;
import stackside.model.PedalColour;
import stackside.model.PedalSetting;
import stackside.model.PedalUse;
import stackside.model.Premises;
import stackside.model.Profile;
import stackside.model.ProgramReading;
import stackside.model.ReadingDistance;
import stackside.model.Response;
import stackside.model.Room;
import stackside.model.RoomStock;
import stackside.model.SelectionKind;
import stackside.model.ServiceEvent;
import stackside.model.ServiceEventKind;
import stackside.model.Settings;
import stackside.model.ShareOfRatedPower;
import stackside.model.Sign;
import stackside.model.SingleFault;
import stackside.model.Site;
import stackside.model.SlotRange;
import stackside.model.Socket;
import stackside.model.SocketKind;
import stackside.model.Step;
import stackside.model.StoredProgram;
import stackside.model.ThingId;
import stackside.model.Tone;
import stackside.model.Tract;
import stackside.model.Unassigned;
import stackside.model.Unit;
import stackside.model.UnitDetails;
import stackside.model.UnitStatus;
import stackside.model.Wall;
import stackside.model.Waveform;
import stackside.quantity.AmpereSquaredSeconds;
import stackside.quantity.Band;
import stackside.quantity.Kilograms;
import stackside.quantity.LitresPerMinute;
import stackside.quantity.LoadRange;
import stackside.quantity.Millimetres;
import stackside.quantity.Months;
import stackside.quantity.Ohms;
import stackside.quantity.PeakVolts;
import stackside.quantity.Percent;
import stackside.quantity.PowerRange;
import stackside.quantity.Watts;
import stackside.source.Location;

/**
 * A unit with one room and one generator, built in code. It has two monopolar sockets, one bipolar
 * socket and one argon socket; a snare, a forceps, a bipolar probe and an argon probe; and one
 * approved answer, which each test adapts to its question.
 */
final class Bench {
  private static final Location AT = new Location("bench.yaml", 1, 1, 0);
  private static final ConnectorId THREE_PIN = new ConnectorId("three-pin");
  private static final ConnectorId PIN = new ConnectorId("pin-3");
  private static final ConnectorId WIDE = new ConnectorId("two-pin-wide");
  private static final ConnectorId LOCK = new ConnectorId("argon-lock");
  private static final ConnectorId FLAT = new ConnectorId("two-pin-flat");

  private SelectionKind selects = SelectionKind.BY_PROGRAM;
  private MonitorKind monitor = MonitorKind.CONTACT_QUALITY;
  private ElectrodeArea area = ElectrodeArea.SPLIT;
  private boolean senses;
  private Optional<String> atPowerOn = Optional.empty();
  private final Map<String, Integer> onPlugging = new LinkedHashMap<>();
  private final Map<Condition, Response> answers = new EnumMap<>(Condition.class);
  private final List<Reading> readings = new ArrayList<>();
  private final List<ServiceEvent> events = new ArrayList<>();
  private final List<Answered> others = new ArrayList<>();
  private final List<Checklist> checklists = new ArrayList<>();
  private final List<Drill> drills = new ArrayList<>();
  private List<String> instruments = List.of("snare");
  private List<PedalColour> pedals = List.of(PedalColour.YELLOW, PedalColour.BLUE);
  private Answered main =
      new Answered(Optional.of(1), "snare", "m1", "cut-2-60", "soft-2-60", true);
  private double cableRating = 3000;
  private boolean threePinFitsPlate;
  private boolean argonSocket = true;

  /** A pedal is written as mode-level-limit, as "none", or as "" if it was not read. */
  private record Answered(
      Optional<Integer> slot,
      String instrument,
      String socket,
      String yellow,
      String blue,
      boolean plate) {}

  private record Reading(int slot, String socket, String yellow, String blue) {}

  private Bench() {}

  static Bench selecting(SelectionKind kind) {
    Bench bench = new Bench();
    bench.selects = kind;
    return bench;
  }

  Bench monitor(MonitorKind kind, ElectrodeArea plate) {
    monitor = kind;
    area = plate;
    return this;
  }

  Bench sensingPlugs() {
    senses = true;
    return this;
  }

  Bench atPowerOn(String socket) {
    atPowerOn = Optional.of(socket);
    return this;
  }

  Bench pluggingBringsUp(String socket, int slot) {
    onPlugging.put(socket, slot);
    return this;
  }

  Bench plateSocketTakesThreePin() {
    threePinFitsPlate = true;
    return this;
  }

  Bench withoutArgonSocket() {
    argonSocket = false;
    return this;
  }

  /**
   * Sets how the machine responds to a condition. Lamps and display share one string, "" for none.
   */
  Bench answering(Condition condition, Tone tone, OutputSeen output) {
    return answering(condition, tone, output, Map.of(), Optional.empty(), Evidence.Basis.MANUAL);
  }

  Bench answering(
      Condition condition,
      Tone tone,
      OutputSeen output,
      Map<LampId, String> lamps,
      Optional<String> display,
      Evidence.Basis basis) {
    Map<LampId, Fact<String>> shown = new LinkedHashMap<>();
    lamps.forEach((lamp, colour) -> shown.put(lamp, fact(colour)));
    answers.put(
        condition,
        new Response(
            AT,
            Optional.of(fact(tone)),
            shown,
            display.map(Bench::fact),
            Optional.of(fact(output)),
            fact(Evidence.of(basis))));
    return this;
  }

  /** An answer that leaves out everything but how it is known. */
  Bench answeringNothingMore(Condition condition) {
    answers.put(
        condition,
        new Response(
            AT,
            Optional.empty(),
            Map.of(),
            Optional.empty(),
            Optional.empty(),
            fact(Evidence.of(Evidence.Basis.MANUAL))));
    return this;
  }

  Bench answeringWithoutTone(Condition condition) {
    answers.put(
        condition,
        new Response(
            AT,
            Optional.empty(),
            Map.of(),
            Optional.empty(),
            Optional.of(fact(OutputSeen.NONE)),
            fact(Evidence.of(Evidence.Basis.MANUAL))));
    return this;
  }

  Bench answeringWithoutOutput(Condition condition) {
    answers.put(
        condition,
        new Response(
            AT,
            Optional.of(fact(Tone.ALARM)),
            Map.of(),
            Optional.empty(),
            Optional.empty(),
            fact(Evidence.of(Evidence.Basis.MANUAL))));
    return this;
  }

  Bench keeping(String... kept) {
    instruments = List.of(kept);
    return this;
  }

  Bench pedals(PedalColour... there) {
    pedals = List.of(there);
    return this;
  }

  Bench cableRated(double volts) {
    cableRating = volts;
    return this;
  }

  /** Sets the answer under test. */
  Bench approving(String instrument, String socket, String yellow, String blue) {
    main = new Answered(main.slot(), instrument, socket, yellow, blue, main.plate());
    return this;
  }

  Bench withoutPlate() {
    main =
        new Answered(
            main.slot(), main.instrument(), main.socket(), main.yellow(), main.blue(), false);
    return this;
  }

  Bench setByHand() {
    main =
        new Answered(
            Optional.empty(),
            main.instrument(),
            main.socket(),
            main.yellow(),
            main.blue(),
            main.plate());
    return this;
  }

  /** Adds another approved answer on the same model, for a lesion that the room does not offer. */
  Bench alsoApproving(int slot, String socket, String yellow, String blue) {
    others.add(new Answered(Optional.of(slot), "snare", socket, yellow, blue, true));
    return this;
  }

  Bench reading(int slot, String socket, String yellow, String blue) {
    readings.add(new Reading(slot, socket, yellow, blue));
    return this;
  }

  Bench servicedAfterReading() {
    Asset asset = asset(machine());
    events.add(
        new ServiceEvent(
            AT,
            fact(asset),
            fact(LocalDate.of(2026, 6, 1)),
            fact(ServiceEventKind.SERVICE),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()));
    return this;
  }

  Bench guarding(ChecklistKind kind, SingleFault... faults) {
    checklists.add(
        new Checklist(
            AT,
            new ThingId(Kind.CHECKLIST, "list-" + checklists.size()),
            Optional.empty(),
            fact(kind),
            new AppliesTo(AT, List.of()),
            List.of(new ChecklistStep(AT, fact("Look"), Optional.empty(), facts(faults)))));
    return this;
  }

  Bench mending(String drill, Sign sign, SingleFault... faults) {
    drills.add(
        new Drill(
            AT,
            new ThingId(Kind.DRILL, drill),
            fact(drill),
            sign,
            new AppliesTo(AT, List.of()),
            fact("Foot off."),
            Arrays.stream(faults)
                .map(
                    fault ->
                        new DrillCheck(
                            AT,
                            fact("Look"),
                            Optional.empty(),
                            facts(fault),
                            Optional.empty(),
                            Optional.empty(),
                            List.of(),
                            List.of()))
                .toList(),
            Optional.empty(),
            fact(true),
            Optional.empty()));
    return this;
  }

  static Sign sign(Optional<Tone> tone, Map<LampId, String> lamps, Optional<String> display) {
    Map<LampId, Fact<String>> shown = new LinkedHashMap<>();
    lamps.forEach((lamp, colour) -> shown.put(lamp, fact(colour)));
    return new Sign(AT, tone.map(Bench::fact), shown, display.map(Bench::fact), Optional.empty());
  }

  // --- results

  Circuits circuits() {
    return Circuits.of(unit());
  }

  /** All outcomes of a fault. */
  List<FaultOutcome> outcomes(SingleFault fault) {
    return circuits().outcomes().stream().filter(each -> each.fault() == fault).toList();
  }

  /** The one outcome of a fault. */
  FaultOutcome outcome(SingleFault fault) {
    List<FaultOutcome> all = outcomes(fault);
    if (all.size() != 1) {
      throw new AssertionError(all.size() + " outcomes of " + fault);
    }
    return all.get(0);
  }

  /** The outcome of a fault that involves a socket. */
  FaultOutcome outcome(SingleFault fault, String socket) {
    return outcomes(fault).stream()
        .filter(
            each ->
                each.deviation().socket().stream()
                    .anyMatch(there -> there.id().local().equals(socket)))
        .findFirst()
        .orElseThrow();
  }

  /** The outcome of having another program active. */
  FaultOutcome wrongProgram(int slot) {
    return outcomes(SingleFault.WRONG_PROGRAM).stream()
        .filter(each -> each.deviation().program().orElseThrow().slot().equals(Optional.of(slot)))
        .findFirst()
        .orElseThrow();
  }

  /** Presses the pedals with everything correct. */
  List<Press> asApproved() {
    Unit unit = unit();
    Room room = unit.rooms().get(0);
    Asset asset = unit.assets().get(0);
    return new Pressing(
            SetUp.of(
                    unit,
                    room,
                    asset,
                    unit.profiles().get(0),
                    KnownPrograms.of(unit, Readings.of(unit), asset))
                .orElseThrow())
        .asApproved();
  }

  // --- parts

  Unit unit() {
    Machine machine = machine();
    Asset asset = asset(machine);
    Lesion lesion = lesion("flat");
    Lesion other = lesion("other");
    Site site =
        new Site(
            AT,
            new ThingId(Kind.SITE, "caecum"),
            fact("Caecum"),
            List.of(),
            fact(Tract.LOWER),
            fact(Wall.THIN));
    List<Profile> profiles = new ArrayList<>();
    profiles.add(profile(machine, "main", lesion, site, main));
    for (int i = 0; i < others.size(); i++) {
      profiles.add(profile(machine, "other-" + i, other, site, others.get(i)));
    }
    Room room =
        new Room(
            AT,
            new ThingId(Kind.ROOM, "room"),
            fact("Room"),
            fact(new Premises(AT, new ThingId(Kind.LOCATION, "place"), fact("Place"), List.of())),
            List.of(fact(asset)),
            List.of(fact(footSwitch())),
            List.of(fact(adult())),
            new RoomStock(
                AT,
                instruments.stream().map(name -> fact(instrument(name))).toList(),
                List.of(fact(cable())),
                List.of(fact(plate())),
                List.of(),
                Optional.empty()),
            List.of(new Offer(AT, List.of(fact(lesion)), List.of(fact(site)))),
            List.of(),
            fact(1));
    return new Unit(
        details(),
        List.of(footSwitch()),
        instruments.stream().map(this::instrument).toList(),
        List.of(cable()),
        List.of(plate()),
        List.of(site),
        List.of(),
        List.of(),
        List.of(lesion, other),
        List.of(machine),
        List.of(),
        profiles,
        List.of(asset),
        programReadings(asset),
        events,
        List.of(),
        List.of(),
        List.of(room),
        checklists,
        drills,
        List.of(),
        List.of(),
        Map.of(),
        Map.of(),
        List.of());
  }

  private Machine machine() {
    return new Machine(
        AT,
        new ThingId(Kind.MACHINE, "bench"),
        fact("Bench"),
        List.of(fact("1.0")),
        fact(new LoadRange(new Ohms(50), new Ohms(2000))),
        fact(monitor),
        List.of(fact(footSwitch())),
        List.of(),
        sockets(),
        fact(selects),
        atPowerOn.map(name -> fact(socket(name))),
        Optional.of(fact(new SlotRange(1, 3))),
        modes(),
        List.of(new Lamp(AT, new LampId("plate-lamp"), fact("Plate lamp"))),
        answers);
  }

  private List<Socket> sockets() {
    return Stream.of("m1", "m2", "bi", "ar", "n")
        .filter(name -> argonSocket || !name.equals("ar"))
        .map(this::socket)
        .toList();
  }

  private Socket socket(String name) {
    return switch (name) {
      case "m1" -> socket(name, 1, SocketKind.MONOPOLAR, THREE_PIN);
      case "m2" -> socket(name, 2, SocketKind.MONOPOLAR, THREE_PIN);
      case "bi" -> socket(name, 3, SocketKind.BIPOLAR, WIDE);
      case "ar" -> socket(name, 4, SocketKind.ARGON, LOCK);
      case "n" ->
          threePinFitsPlate
              ? socket(name, 5, SocketKind.NEUTRAL, FLAT, THREE_PIN)
              : socket(name, 5, SocketKind.NEUTRAL, FLAT);
      default -> throw new AssertionError(name);
    };
  }

  private Socket socket(String name, int column, SocketKind kind, ConnectorId... takes) {
    return new Socket(
        AT,
        new ThingId(Kind.SOCKET, "bench/" + name),
        fact(name),
        fact(name),
        fact(new PanelPlace(1, column)),
        fact(kind),
        Arrays.stream(takes).map(Bench::fact).toList(),
        Optional.of(fact(senses)),
        Optional.ofNullable(onPlugging.get(name)).map(Bench::fact));
  }

  private static List<Mode> modes() {
    return List.of(
        mode("cut", PedalAction.CUT, EnergyKind.MONOPOLAR, CurrentType.CUT, 600),
        mode(
            "soft",
            PedalAction.COAGULATION,
            EnergyKind.MONOPOLAR,
            CurrentType.SOFT_COAGULATION,
            150),
        mode(
            "spray",
            PedalAction.COAGULATION,
            EnergyKind.MONOPOLAR,
            CurrentType.SPRAY_COAGULATION,
            4000),
        mode(
            "twin", PedalAction.COAGULATION, EnergyKind.BIPOLAR, CurrentType.SOFT_COAGULATION, 120),
        mode(
            "plasma",
            PedalAction.COAGULATION,
            EnergyKind.ARGON,
            CurrentType.ARGON_PLASMA_COAGULATION,
            3500));
  }

  private static Mode mode(
      String name, PedalAction pedal, EnergyKind kind, CurrentType current, double peak) {
    return new Mode(
        AT,
        new ThingId(Kind.MODE, "bench/" + name),
        fact(name),
        fact(pedal),
        fact(kind),
        fact(current),
        fact(Waveform.CONTINUOUS),
        Optional.of(
            new LevelScale(
                AT, fact("Rung"), Optional.of(fact(1)), Optional.of(fact(4)), List.of())),
        Optional.of(fact(new PowerRange(new Watts(10), new Watts(120), new Watts(5)))),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(new ByLevel<>(AT, Optional.of(fact(new PeakVolts(peak))), Map.of())),
        Optional.of(new ByLevel<>(AT, Optional.of(fact(new CrestFactor(1.5))), Map.of())),
        List.of());
  }

  private static Asset asset(Machine machine) {
    return new Asset(
        AT,
        new ThingId(Kind.ASSET, "EQ-1"),
        fact(machine),
        fact("1.0"),
        fact(AssetStatus.IN_USE),
        fact(LocalDate.of(2025, 1, 1)));
  }

  private Profile profile(
      Machine machine, String name, Lesion lesion, Site site, Answered answered) {
    Settings settings =
        new Settings(
            AT,
            answered.slot().map(slot -> new StoredProgram(AT, fact(slot), fact("P" + slot))),
            fact(instrument(answered.instrument())),
            fact(socket(answered.socket())),
            use(answered.yellow()),
            use(answered.blue()),
            Optional.empty(),
            answered.plate() ? Optional.of(fact(plate())) : Optional.empty(),
            answered.instrument().equals("probe")
                ? Optional.of(fact(new LitresPerMinute(1)))
                : Optional.empty());
    return new Profile(
        AT,
        new ThingId(Kind.PROFILE, name),
        fact(machine),
        List.of(fact(lesion)),
        List.of(fact(site)),
        lesion.steps().get(0),
        List.of(),
        Optional.of(settings),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Map.of());
  }

  private static PedalUse use(String pedal) {
    if (pedal.equals("none")) {
      return new Unassigned(AT);
    }
    List<String> parts = List.of(pedal.split("-", 3));
    return new PedalSetting(
        AT,
        fact(modeNamed(parts.get(0))),
        Optional.of(fact(new Level(parts.get(1)))),
        Optional.of(fact(new Watts(Double.parseDouble(parts.get(2))))));
  }

  private static Mode modeNamed(String name) {
    return modes().stream()
        .filter(mode -> mode.id().local().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private List<ProgramReading> programReadings(Asset asset) {
    List<ProgramReading> rows = new ArrayList<>();
    for (Reading reading : readings) {
      row(asset, reading, PedalColour.YELLOW, reading.yellow()).ifPresent(rows::add);
      row(asset, reading, PedalColour.BLUE, reading.blue()).ifPresent(rows::add);
    }
    return rows;
  }

  private Optional<ProgramReading> row(
      Asset asset, Reading reading, PedalColour colour, String pedal) {
    if (pedal.isEmpty()) {
      return Optional.empty();
    }
    Optional<PedalSetting> set = use(pedal).setting();
    return Optional.of(
        new ProgramReading(
            AT,
            fact(asset),
            fact(LocalDate.of(2026, 5, 1)),
            fact(reading.slot()),
            fact("P" + reading.slot()),
            fact(socket(reading.socket())),
            fact(colour),
            set.map(PedalSetting::mode),
            set.flatMap(PedalSetting::level),
            set.flatMap(PedalSetting::limit),
            fact(new Initials("AP")),
            Optional.empty()));
  }

  private Instrument instrument(String name) {
    return switch (name) {
      case "snare", "forceps", "knife" -> instrument(name, EnergyKind.MONOPOLAR, PIN, 2000);
      case "tongs" -> instrument(name, EnergyKind.BIPOLAR, WIDE, 800);
      case "twin-snare" -> instrument(name, EnergyKind.BIPOLAR, PIN, 800);
      case "odd-wire" -> instrument(name, EnergyKind.MONOPOLAR, WIDE, 2000);
      case "probe" -> instrument(name, EnergyKind.ARGON, LOCK, 5000);
      case "orphan" -> instrument(name, EnergyKind.MONOPOLAR, new ConnectorId("odd"), 2000);
      default -> throw new AssertionError(name);
    };
  }

  private static Instrument instrument(
      String name, EnergyKind kind, ConnectorId connector, double rating) {
    return new Instrument(
        AT,
        new ThingId(Kind.INSTRUMENT, name),
        fact(name),
        List.of(),
        fact(kind),
        fact(connector),
        fact(new PeakVolts(rating)),
        Optional.empty());
  }

  private Cable cable() {
    return new Cable(
        AT,
        new ThingId(Kind.CABLE, "cable"),
        fact("Cable"),
        fact(THREE_PIN),
        fact(PIN),
        fact(new PeakVolts(cableRating)));
  }

  private Electrode plate() {
    return new Electrode(
        AT,
        new ThingId(Kind.ELECTRODE, "plate"),
        fact("Plate"),
        fact(area),
        fact(FLAT),
        fact(new Band<>(Optional.<Kilograms>empty(), Optional.<Kilograms>empty())),
        Optional.of(fact(new AmpereSquaredSeconds(30))));
  }

  private FootSwitch footSwitch() {
    return new FootSwitch(
        AT,
        new ThingId(Kind.FOOT_SWITCH, "foot"),
        fact("Foot"),
        pedals.stream()
            .map(
                colour ->
                    new Pedal(
                        AT,
                        fact(colour),
                        fact(
                            colour == PedalColour.YELLOW
                                ? PedalAction.CUT
                                : PedalAction.COAGULATION)))
            .toList());
  }

  private static Lesion lesion(String name) {
    return new Lesion(
        AT,
        new ThingId(Kind.LESION, name),
        fact(name),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(fact(new Step(AT, new ThingId(Kind.STEP, "resection"), fact("Resection")))));
  }

  private static PatientGroup adult() {
    return new PatientGroup(
        AT,
        new ThingId(Kind.PATIENT_GROUP, "adult"),
        Optional.empty(),
        fact(new Band<>(Optional.<Kilograms>empty(), Optional.<Kilograms>empty())));
  }

  private static UnitDetails details() {
    return new UnitDetails(
        AT,
        fact(1),
        fact("Bench"),
        fact(UnitStatus.DEMONSTRATION),
        fact("en-GB"),
        fact(URI.create("https://bench.example/")),
        List.of(),
        new ReadingDistance(AT, fact(new Millimetres(700)), fact(new Millimetres(1500))),
        List.of(),
        List.of(adult()),
        List.of(),
        Map.of(),
        Map.of(),
        new OutputCheckPolicy(
            AT,
            fact(new Percent(20)),
            fact(new ShareOfRatedPower(new Percent(10))),
            fact(new Months(12))),
        Map.of(),
        Optional.empty(),
        Optional.empty(),
        Map.of(),
        List.of());
  }

  private static List<Fact<SingleFault>> facts(SingleFault... faults) {
    return Arrays.stream(faults).map(Bench::fact).toList();
  }

  private static <T> Fact<T> fact(T value) {
    return new Fact<>(value, AT);
  }
}
