package stackside.derive.signed;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import stackside.derive.chain.Chains;
import stackside.model.Cable;
import stackside.model.Electrode;
import stackside.model.Fact;
import stackside.model.Instrument;
import stackside.model.Lesion;
import stackside.model.PatientGroup;
import stackside.model.PedalSetting;
import stackside.model.PedalUse;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.model.Site;
import stackside.model.Socket;
import stackside.model.Thing;
import stackside.model.Unit;

/**
 * What a signature under a profile covers: for which lesions, sites, step and patients it holds,
 * its answer, and those facts of the machine and its accessories that the answer rests on.
 */
final class ProfileFacts {
  private final Unit unit;
  private final Profile profile;

  private ProfileFacts(Unit unit, Profile profile) {
    this.unit = unit;
    this.profile = profile;
  }

  static FactList of(Unit unit, Profile profile) {
    return new ProfileFacts(unit, profile).facts();
  }

  private FactList facts() {
    FactList facts =
        new FactList()
            .text("machine", profile.machine().value().id().slug())
            .list("lesions", byId(values(profile.lesions()).map(f -> (Lesion) f), ProfileFacts::of))
            .list("sites", byId(profile.allSites().stream(), ProfileFacts::of))
            .members("step", named(profile.step().value()))
            .list("patients", byId(unit.patientsOf(profile).stream(), ProfileFacts::of))
            .text("cold", profile.cold())
            .text("not-approved", profile.notApproved())
            .ids("evidence", profile.evidence());
    profile.ask().ifPresent(role -> facts.members("ask", named(role.value())));
    profile.settings().ifPresent(settings -> facts.members("settings", of(settings)));
    profile
        .alternative()
        .ifPresent(
            second ->
                facts.members(
                    "alternative",
                    new FactList().text("name", second.name()).text("when", second.when())));
    profile.technique().ifPresent(prose -> facts.text("technique", prose.plain()));
    profile.caution().ifPresent(prose -> facts.text("caution", prose.plain()));
    FactList because = new FactList();
    profile.because().forEach(because::text);
    return facts.members("because", because);
  }

  private interface Written<T> {
    FactList facts(T thing);
  }

  private static Stream<?> values(List<? extends Fact<?>> facts) {
    return facts.stream().map(Fact::value);
  }

  private static <T extends Thing> List<Json.Members> byId(Stream<T> things, Written<T> written) {
    return things
        .distinct()
        .sorted(Comparator.comparing(Thing::id))
        .map(thing -> written.facts(thing).json())
        .toList();
  }

  private static FactList named(Thing thing) {
    return new FactList().text("id", thing.id().slug()).text("name", thing.title());
  }

  private static FactList of(Lesion lesion) {
    FactList facts = named(lesion);
    lesion.shape().ifPresent(shape -> facts.word("shape", shape));
    lesion.kind().ifPresent(kind -> facts.word("kind", kind));
    lesion.size().ifPresent(size -> facts.text("size", size.value().text()));
    return facts;
  }

  private static FactList of(Site site) {
    return named(site).word("tract", site.tract()).word("wall", site.wall());
  }

  private static FactList of(PatientGroup group) {
    return named(group).text("weight", group.weight().value().text());
  }

  private FactList of(Settings settings) {
    FactList facts =
        new FactList()
            .members("instrument", of(settings.instrument().value()))
            .members("socket", of(settings.socket().value()))
            .list("cables", cables(settings))
            .members("yellow", of(settings.yellow()))
            .members("blue", of(settings.blue()))
            .quantity("argon-flow", settings.argonFlow());
    settings
        .program()
        .ifPresent(
            program ->
                facts.members(
                    "program",
                    new FactList()
                        .number("slot", program.slot())
                        .text("shown-as", program.shownAs())));
    settings.pressOnly().ifPresent(only -> facts.word("press-only", only));
    settings.neutralElectrode().ifPresent(plate -> facts.members("neutral", of(plate.value())));
    return facts;
  }

  private static FactList of(Instrument instrument) {
    return named(instrument)
        .word("kind", instrument.kind())
        .text("connector", instrument.connector().value().toString())
        .quantity("rated-voltage", instrument.ratedVoltage())
        .flag("single-use", instrument.singleUse());
  }

  private static FactList of(Electrode plate) {
    return named(plate)
        .word("area", plate.area())
        .text("plug", plate.plug().value().toString())
        .text("patients", plate.patients().value().text())
        .quantity("heating-factor", plate.heatingFactor());
  }

  private static FactList of(Socket socket) {
    return new FactList()
        .text("id", socket.id().local())
        .text("label", socket.label())
        .text("name", socket.name())
        .word("kind", socket.kind())
        .text("place", socket.place().value().text());
  }

  /** Every cable and adaptor that lies between instrument and socket in some room. */
  private List<Json.Members> cables(Settings settings) {
    Stream<Cable> used =
        unit.roomsWith(profile.machine().value()).stream()
            .flatMap(
                room ->
                    Chains.in(room)
                        .between(settings.instrument().value(), settings.socket().value())
                        .stream())
            .flatMap(chain -> chain.cables().stream());
    return byId(
        used,
        cable ->
            named(cable)
                .text("plug", cable.plug().value().toString())
                .text("connector", cable.connector().value().toString())
                .quantity("rated-voltage", cable.ratedVoltage()));
  }

  private static FactList of(PedalUse pedal) {
    return pedal
        .setting()
        .map(ProfileFacts::of)
        .orElseGet(() -> new FactList().put("unassigned", new Json.Flag(true)));
  }

  private static FactList of(PedalSetting setting) {
    FactList facts = new FactList().members("mode", ModeFacts.at(setting));
    setting.level().ifPresent(level -> facts.text("level", level.value().text()));
    return facts.quantity("limit", setting.limit());
  }
}
