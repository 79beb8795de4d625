package stackside.render;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.derive.chain.Chain;
import stackside.derive.chain.Chains;
import stackside.derive.circuit.FaultOutcome;
import stackside.derive.circuit.OutcomeClass;
import stackside.derive.circuit.Press;
import stackside.model.Asset;
import stackside.model.Cable;
import stackside.model.Electrode;
import stackside.model.FootSwitch;
import stackside.model.Instrument;
import stackside.model.Machine;
import stackside.model.PanelPlace;
import stackside.model.Plug;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.model.Settings;
import stackside.model.SingleFault;
import stackside.model.Socket;
import stackside.model.SocketKind;
import stackside.render.PanelPlan.Lead;
import stackside.render.PanelPlan.Misfit;
import stackside.render.PanelPlan.Place;

/**
 * Plans a front panel for a room, for one answer in a room, or for a model in all rooms. What would
 * happen to a plug in another socket always comes from the circuit analysis, never from here.
 */
public final class PanelPlans {
  private final Analysis analysis;
  private final Words words;
  private final Machine machine;
  private final Map<Socket, Set<Lead>> leads = new LinkedHashMap<>();
  private final Map<Socket, List<Mistake>> mistakes = new LinkedHashMap<>();

  private PanelPlans(Publication publication, Machine machine) {
    this.analysis = publication.analysis();
    this.words = publication.words();
    this.machine = machine;
  }

  /** Everything plugged into a generator in a room, all its approved answers combined. */
  public static PanelPlan in(Publication publication, Room room, Asset asset) {
    Machine machine = asset.machine().value();
    return in(
        publication,
        room,
        asset,
        publication.unit().profilesServing(room).stream()
            .filter(profile -> profile.machine().value().id().equals(machine.id()))
            .toList());
  }

  /** What is plugged into a generator in a room for some of its answers. */
  public static PanelPlan in(
      Publication publication, Room room, Asset asset, List<Profile> answers) {
    PanelPlans plans = new PanelPlans(publication, asset.machine().value());
    answers.forEach(profile -> plans.add(room, profile));
    return plans.plan();
  }

  /** What is plugged in for one answer in a room. */
  public static PanelPlan in(Publication publication, Room room, Profile profile) {
    PanelPlans plans = new PanelPlans(publication, profile.machine().value());
    plans.add(room, profile);
    return plans.plan();
  }

  /** Everything plugged into a model, all rooms combined. */
  public static PanelPlan of(Publication publication, Machine machine) {
    PanelPlans plans = new PanelPlans(publication, machine);
    for (Room room : publication.unit().roomsWith(machine)) {
      publication.unit().profilesServing(room).stream()
          .filter(profile -> profile.machine().value().id().equals(machine.id()))
          .forEach(profile -> plans.add(room, profile));
    }
    return plans.plan();
  }

  private void add(Room room, Profile profile) {
    profile.settings().ifPresent(settings -> add(room, settings));
    for (FaultOutcome outcome : analysis.circuits().outcomesOf(profile, room)) {
      if (outcome.fault() == SingleFault.INSTRUMENT_IN_WRONG_SOCKET) {
        outcome.deviation().socket().ifPresent(socket -> add(room, profile, socket, outcome));
      }
    }
  }

  private void add(Room room, Settings settings) {
    Chains chains = Chains.in(room);
    Instrument instrument = settings.instrument().value();
    lead(
        settings.socket().value(),
        instrument.title(),
        chains.shortest(instrument, settings.socket().value()));
    settings.neutralElectrode().ifPresent(fact -> neutral(chains, fact.value()));
    for (Socket socket : machine.sockets()) {
      if (socket.kind().value() == SocketKind.FOOT_SWITCH) {
        analysis.unit().footSwitchesFor(room, machine).stream()
            .map(FootSwitch::title)
            .forEach(name -> lead(socket, name, Optional.empty()));
      }
    }
  }

  private void neutral(Chains chains, Electrode electrode) {
    for (Socket socket : machine.sockets()) {
      if (socket.kind().value() == SocketKind.NEUTRAL) {
        chains
            .shortest(electrode, socket)
            .ifPresent(chain -> lead(socket, electrode.title(), Optional.of(chain)));
      }
    }
  }

  private void lead(Socket socket, String name, Optional<Chain> chain) {
    Optional<String> through = chain.flatMap(this::through).map(Numbers::bind);
    String hand = chain.map(PanelPlans::hand).orElse(name);
    leads
        .computeIfAbsent(socket, key -> new LinkedHashSet<>())
        .add(new Lead(Numbers.bind(name), Numbers.bind(hand), through));
  }

  /** What the user plugs in: the part next to the machine. */
  private static String hand(Chain chain) {
    return chain.parts().get(0).title();
  }

  private Optional<String> through(Chain chain) {
    return chain.cables().isEmpty()
        ? Optional.empty()
        : Optional.of(
            words.say(
                "panel.through",
                chain.cables().stream()
                    .map(Cable::title)
                    .reduce((one, other) -> words.say("list.and", one, other))
                    .orElseThrow()));
  }

  private void add(Room room, Profile profile, Socket socket, FaultOutcome outcome) {
    Press press = outcome.worst();
    mistakes
        .computeIfAbsent(socket, key -> new ArrayList<>())
        .add(
            new Mistake(
                Numbers.bind(profile.settings().orElseThrow().instrument().value().title()),
                plugged(room, profile, socket),
                press.outcomeClass(),
                OutcomeWords.brief(press, words)));
  }

  /** Something in a wrong socket: what it is, the plug that fits, and what happens. */
  private record Mistake(String instrument, String plug, OutcomeClass outcome, String words) {}

  /** What the user plugs in: the cable's plug, or the instrument's own. */
  private static String plugged(Room room, Profile profile, Socket socket) {
    Instrument instrument = profile.settings().orElseThrow().instrument().value();
    return Numbers.bind(
        Chains.in(room)
            .shortest(instrument, socket)
            .filter(chain -> !chain.cables().isEmpty())
            .map(chain -> chain.cables().get(chain.cables().size() - 1).title())
            .orElse(instrument.title()));
  }

  /**
   * One remark per outcome. For an empty socket it names the plugs that fit; for a socket in use it
   * names the instruments that do not belong. If one thing has several outcomes, the worst is
   * reported. Something that works here as well as elsewhere is not a mistake.
   */
  private List<Misfit> misfits(Socket socket) {
    boolean used = leads.containsKey(socket);
    Map<String, Mistake> worst = new LinkedHashMap<>();
    for (Mistake mistake : mistakes.getOrDefault(socket, List.of())) {
      worst.merge(used ? mistake.instrument() : mistake.plug(), mistake, PanelPlans::worse);
    }
    Map<Comes, List<String>> alike = new LinkedHashMap<>();
    worst.forEach(
        (name, mistake) -> {
          if (!used || mistake.outcome() != OutcomeClass.RIGHT) {
            Comes comes = new Comes(mistake.outcome(), mistake.words());
            alike.computeIfAbsent(comes, key -> new ArrayList<>()).add(name);
          }
        });
    return alike.entrySet().stream()
        .map(
            entry ->
                new Misfit(
                    words.say(used ? "panel.here" : "panel.also-fits", listed(entry.getValue())),
                    entry.getKey().words(),
                    OutcomeWords.mark(entry.getKey().outcome())))
        .toList();
  }

  /** The outcome of a mistake, and its words. */
  private record Comes(OutcomeClass outcome, String words) {}

  /** "Oval snare, crescent snare or needle knife". */
  private String listed(List<String> names) {
    String last = names.get(names.size() - 1);
    return names.size() == 1
        ? last
        : words.say("list.or", String.join(", ", names.subList(0, names.size() - 1)), last);
  }

  private static Mistake worse(Mistake one, Mistake other) {
    return one.outcome().compareTo(other.outcome()) <= 0 ? one : other;
  }

  private PanelPlan plan() {
    List<Place> places = new ArrayList<>();
    machine.sockets().stream()
        .sorted((a, b) -> place(a).compareTo(place(b)))
        .forEach(
            socket ->
                places.add(
                    new Place(
                        socket,
                        plug(socket),
                        List.copyOf(leads.getOrDefault(socket, Set.of())),
                        misfits(socket))));
    return new PanelPlan(machine, places, words);
  }

  private static PanelPlace place(Socket socket) {
    return socket.place().value();
  }

  private Optional<Plug> plug(Socket socket) {
    return Stream.of(socket)
        .flatMap(each -> each.takes().stream())
        .flatMap(form -> machine.plug(form.value()).stream())
        .findFirst();
  }
}
