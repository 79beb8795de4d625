package stackside.model;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The whole unit as read and linked. Lists keep the order of the content: lists in a file as
 * written, kinds with one file per thing by id. Whatever could not be linked is in {@link #broken}.
 * A record that its author withdrew appears only in {@link #withdrawn}.
 *
 * @param templates the texts with which the unit replaces files of the program, by their path below
 *     {@code templates/}
 * @param ownWords the words with which the unit replaces those of the program, by their key
 */
public record Unit(
    UnitDetails details,
    List<FootSwitch> footSwitches,
    List<Instrument> instruments,
    List<Cable> cables,
    List<Electrode> electrodes,
    List<Site> sites,
    List<SiteGroup> siteGroups,
    List<Step> steps,
    List<Lesion> lesions,
    List<Machine> machines,
    List<Citation> citations,
    List<Profile> profiles,
    List<Asset> assets,
    List<ProgramReading> programReadings,
    List<ServiceEvent> serviceEvents,
    List<OutputCheck> outputChecks,
    List<LoggedRecord> withdrawn,
    List<Room> rooms,
    List<Checklist> checklists,
    List<Drill> drills,
    List<LearningPath> paths,
    List<HandbookPage> handbook,
    Map<String, String> templates,
    Map<String, Fact<String>> ownWords,
    List<Broken> broken) {

  public Unit {
    footSwitches = IndexedList.toThemselves(footSwitches);
    instruments = IndexedList.toThemselves(instruments);
    cables = IndexedList.toThemselves(cables);
    electrodes = IndexedList.toThemselves(electrodes);
    sites = IndexedList.toThemselves(sites);
    siteGroups = IndexedList.toThemselves(siteGroups);
    steps = IndexedList.toThemselves(steps);
    lesions = IndexedList.toThemselves(lesions);
    machines = IndexedList.to(machines, Unit::partsOf);
    citations = IndexedList.toThemselves(citations);
    profiles = IndexedList.to(profiles, each -> List.of(each.machine().value().id()));
    assets = IndexedList.toThemselves(assets);
    programReadings = List.copyOf(programReadings);
    serviceEvents = IndexedList.to(serviceEvents, each -> List.of(each.asset().value().id()));
    outputChecks = List.copyOf(outputChecks);
    withdrawn = List.copyOf(withdrawn);
    rooms = IndexedList.to(rooms, Unit::whatStandsIn);
    checklists = IndexedList.toThemselves(checklists);
    List<ThingId> models = machines.stream().map(Machine::id).toList();
    drills = IndexedList.to(drills, each -> machinesOf(each, models));
    paths = IndexedList.toThemselves(paths);
    handbook = IndexedList.toThemselves(handbook);
    templates = Collections.unmodifiableMap(new TreeMap<>(templates));
    ownWords = Collections.unmodifiableMap(new TreeMap<>(ownWords));
    broken = IndexedList.toThemselves(broken);
  }

  private static List<ThingId> partsOf(Machine machine) {
    return Stream.concat(machine.sockets().stream(), machine.modes().stream())
        .map(Thing::id)
        .toList();
  }

  private static List<ThingId> whatStandsIn(Room room) {
    return room.assets().stream()
        .map(Fact::value)
        .flatMap(asset -> Stream.of(asset.id(), asset.machine().value().id()))
        .distinct()
        .toList();
  }

  private static List<ThingId> machinesOf(Drill drill, List<ThingId> all) {
    return drill.appliesTo().machines().isEmpty()
        ? all
        : drill.appliesTo().machines().stream().map(fact -> fact.value().id()).distinct().toList();
  }

  /** All things with an id, linked or broken, grouped by kind. */
  public Stream<Thing> things() {
    return Stream.of(
            details.locations(),
            details.locations().stream().flatMap(each -> each.contacts().stream()).toList(),
            details.roles(),
            details.patients(),
            footSwitches,
            instruments,
            cables,
            electrodes,
            sites,
            siteGroups,
            steps,
            lesions,
            machines,
            machines.stream().flatMap(each -> each.sockets().stream()).toList(),
            modes(),
            citations,
            profiles,
            assets,
            rooms,
            checklists,
            drills,
            paths,
            handbook,
            broken)
        .flatMap(List::stream);
  }

  /** What applies to the whole unit, as one thing to sign. */
  public UnitPart policies() {
    return UnitPart.policies(details);
  }

  /** The list of publications, as one thing to sign. */
  public UnitPart sources() {
    return UnitPart.sources();
  }

  /** The modes of all machines, in machine order. */
  public List<Mode> modes() {
    return machines.stream().flatMap(machine -> machine.modes().stream()).toList();
  }

  /** The thing with this id, linked or broken. */
  public Optional<Thing> find(ThingId id) {
    List<ThingId> wanted = List.of(id);
    return Stream.concat(whole(wanted, id.kind()), IndexedList.of(broken, wanted).stream())
        .filter(thing -> thing.id().equals(id))
        .map(Thing.class::cast)
        .findFirst();
  }

  private Stream<? extends Thing> whole(List<ThingId> wanted, Kind kind) {
    return switch (kind) {
      case LOCATION -> details.locations().stream();
      case CONTACT -> details.locations().stream().flatMap(each -> each.contacts().stream());
      case ROLE -> details.roles().stream();
      case PATIENT_GROUP -> details.patients().stream();
      case MACHINE -> IndexedList.of(machines, wanted).stream();
      case SOCKET -> IndexedList.of(machines, wanted).stream().flatMap(of -> of.sockets().stream());
      case MODE -> IndexedList.of(machines, wanted).stream().flatMap(of -> of.modes().stream());
      case ASSET -> IndexedList.of(assets, wanted).stream();
      case INSTRUMENT -> IndexedList.of(instruments, wanted).stream();
      case CABLE -> IndexedList.of(cables, wanted).stream();
      case ELECTRODE -> IndexedList.of(electrodes, wanted).stream();
      case FOOT_SWITCH -> IndexedList.of(footSwitches, wanted).stream();
      case SITE -> IndexedList.of(sites, wanted).stream();
      case SITE_GROUP -> IndexedList.of(siteGroups, wanted).stream();
      case STEP -> IndexedList.of(steps, wanted).stream();
      case LESION -> IndexedList.of(lesions, wanted).stream();
      case PROFILE -> IndexedList.of(profiles, wanted).stream();
      case CHECKLIST -> IndexedList.of(checklists, wanted).stream();
      case DRILL -> IndexedList.of(drills, wanted).stream();
      case ROOM -> IndexedList.of(rooms, wanted).stream();
      case PATH -> IndexedList.of(paths, wanted).stream();
      case HANDBOOK -> IndexedList.of(handbook, wanted).stream();
      case CITATION -> IndexedList.of(citations, wanted).stream();
      case UNIT -> Stream.of(policies(), sources());
    };
  }

  /** Whether anything of this kind is broken; if so, a missing thing proves nothing. */
  public boolean anyBroken(Kind kind) {
    return broken.stream().anyMatch(each -> each.id().kind() == kind);
  }

  /** The profiles of a machine, in content order. */
  public List<Profile> profilesOn(Machine machine) {
    return IndexedList.of(profiles, List.of(machine.id()));
  }

  /** What happened to an asset, in log order. */
  public List<ServiceEvent> eventsOf(Asset asset) {
    return IndexedList.of(serviceEvents, List.of(asset.id()));
  }

  /** The rooms that list the asset. */
  public List<Room> roomsWith(Asset asset) {
    return IndexedList.of(rooms, List.of(asset.id()));
  }

  /** The rooms that have a machine of this model. */
  public List<Room> roomsWith(Machine machine) {
    return IndexedList.of(rooms, List.of(machine.id()));
  }

  /** The models in a room, each once, in the order of the room's assets. */
  public List<Machine> machinesIn(Room room) {
    return room.assets().stream().map(fact -> fact.value().machine().value()).distinct().toList();
  }

  /** The checklists that apply to a machine, in the order set-up, time-out, end of case. */
  public List<Checklist> checklistsFor(Machine machine) {
    return checklists.stream()
        .filter(list -> list.appliesTo().holds(machine))
        .sorted(Comparator.comparing(list -> list.kind().value()))
        .toList();
  }

  /** The drills that apply to a machine. */
  public List<Drill> drillsFor(Machine machine) {
    return IndexedList.of(drills, List.of(machine.id()));
  }

  /**
   * The profiles that answer what a room offers, on the machines in that room: same lesion, and a
   * site and a patient group of the offer.
   */
  public List<Profile> profilesServing(Room room) {
    return IndexedList.of(profiles, whatStandsIn(room)).stream()
        .filter(profile -> serves(room, profile))
        .toList();
  }

  /** The rooms where a profile answers something. */
  public List<Room> roomsServedBy(Profile profile) {
    return roomsWith(profile.machine().value()).stream()
        .filter(room -> serves(room, profile))
        .toList();
  }

  private boolean serves(Room room, Profile profile) {
    boolean patients =
        profile.patients().isEmpty()
            || profile.patients().stream()
                .anyMatch(group -> contains(room.patients(), group.value()));
    return patients
        && room.offers().stream()
            .anyMatch(
                offer ->
                    profile.lesions().stream().anyMatch(l -> contains(offer.lesions(), l.value()))
                        && profile.allSites().stream().anyMatch(offer.allSites()::contains));
  }

  private static <T extends Thing> boolean contains(List<Fact<T>> facts, T thing) {
    return facts.stream().anyMatch(fact -> fact.value().id().equals(thing.id()));
  }

  /** The patient groups that a profile applies to: those named, or all. */
  public List<PatientGroup> patientsOf(Profile profile) {
    return profile.patients().isEmpty()
        ? details.patients()
        : profile.patients().stream().map(Fact::value).toList();
  }

  /** The foot switches of a room that fit a machine. */
  public List<FootSwitch> footSwitchesFor(Room room, Machine machine) {
    return room.footSwitches().stream()
        .map(Fact::value)
        .filter(kept -> contains(machine.footSwitches(), kept))
        .toList();
  }

  /** The colours of the pedals used with a machine in a room, yellow first. */
  public List<PedalColour> pedalsFor(Room room, Machine machine) {
    return footSwitchesFor(room, machine).stream()
        .flatMap(footSwitch -> footSwitch.pedals().stream())
        .map(pedal -> pedal.colour().value())
        .distinct()
        .sorted()
        .toList();
  }

  /** The unit's own word for a thing, or the usual one. */
  public String word(Term term) {
    Fact<String> own = details.words().get(term);
    return own == null ? term.usual() : own.value();
  }
}
