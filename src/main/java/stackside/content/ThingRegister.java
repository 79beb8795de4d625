package stackside.content;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stackside.model.Asset;
import stackside.model.Cable;
import stackside.model.Checklist;
import stackside.model.Citation;
import stackside.model.Contact;
import stackside.model.Drill;
import stackside.model.Electrode;
import stackside.model.Fact;
import stackside.model.FootSwitch;
import stackside.model.HandbookPage;
import stackside.model.Instrument;
import stackside.model.Kind;
import stackside.model.LearningPath;
import stackside.model.Lesion;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.model.PatientGroup;
import stackside.model.Premises;
import stackside.model.Profile;
import stackside.model.Role;
import stackside.model.Room;
import stackside.model.Site;
import stackside.model.SiteGroup;
import stackside.model.Socket;
import stackside.model.Step;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.source.Location;
import stackside.source.Problem;

/** Reads the ids that things carry and enters the things under them, each id once. */
final class ThingRegister {
  private static final int LONGEST = 80;
  private static final Map<Class<?>, Kind> KINDS =
      Map.ofEntries(
          Map.entry(Premises.class, Kind.LOCATION),
          Map.entry(Contact.class, Kind.CONTACT),
          Map.entry(Role.class, Kind.ROLE),
          Map.entry(PatientGroup.class, Kind.PATIENT_GROUP),
          Map.entry(Machine.class, Kind.MACHINE),
          Map.entry(Socket.class, Kind.SOCKET),
          Map.entry(Mode.class, Kind.MODE),
          Map.entry(Asset.class, Kind.ASSET),
          Map.entry(Instrument.class, Kind.INSTRUMENT),
          Map.entry(Cable.class, Kind.CABLE),
          Map.entry(Electrode.class, Kind.ELECTRODE),
          Map.entry(FootSwitch.class, Kind.FOOT_SWITCH),
          Map.entry(Site.class, Kind.SITE),
          Map.entry(SiteGroup.class, Kind.SITE_GROUP),
          Map.entry(Step.class, Kind.STEP),
          Map.entry(Lesion.class, Kind.LESION),
          Map.entry(Profile.class, Kind.PROFILE),
          Map.entry(Checklist.class, Kind.CHECKLIST),
          Map.entry(Drill.class, Kind.DRILL),
          Map.entry(Room.class, Kind.ROOM),
          Map.entry(LearningPath.class, Kind.PATH),
          Map.entry(HandbookPage.class, Kind.HANDBOOK),
          Map.entry(Citation.class, Kind.CITATION));

  private final Findings findings;
  private final SymbolTable scope;

  ThingRegister(Findings findings, SymbolTable scope) {
    this.findings = findings;
    this.scope = scope;
  }

  /** The id that a thing of a type carries. If it has none, its kind counts as incomplete. */
  Optional<Fact<ThingId>> id(
      RecordForm form, Optional<SourceNode.Mapping> mapping, BindingContext frame) {
    Kind kind = Optional.ofNullable(KINDS.get(form.type())).orElseThrow();
    Optional<Fact<ThingId>> id =
        mapping.flatMap(each -> written(each, form).flatMap(value -> id(kind, value, frame)));
    if (id.isEmpty()) {
      scope.markIncomplete(kind);
    }
    return id;
  }

  private Optional<SourceNode> written(SourceNode.Mapping mapping, RecordForm form) {
    String key = keyOf(form);
    Optional<SourceNode> value =
        mapping.entries().stream()
            .filter(entry -> entry.key().text().equals(key))
            .findFirst()
            .map(SourceNode.Entry::value);
    if (value.isEmpty() && mapping.entries().stream().noneMatch(e -> mayMean(e, key, form))) {
      findings.add(
          ReadingFaults.MISSING_KEY
              .at(mapping.at(), Quote.of(key) + " is missing")
              .help("add the key " + Quote.of(key) + " with its value"));
    }
    return value;
  }

  /** Whether a key is likely to be a mistyped form of this one and is reported anyway. */
  private static boolean mayMean(SourceNode.Entry entry, String key, RecordForm form) {
    String written = entry.key().text();
    return written.isEmpty()
        || (!form.keys().contains(written) && NearNames.of(written, List.of(key)).contains(key));
  }

  /** An asset is known by its number, which goes by the asset's own name in its row. */
  private static String keyOf(RecordForm form) {
    return form.slots().stream()
        .filter(slot -> slot.type() == ThingId.class)
        .map(RecordForm.Slot::key)
        .findFirst()
        .orElseThrow();
  }

  private Optional<Fact<ThingId>> id(Kind kind, SourceNode value, BindingContext frame) {
    if (!(value instanceof SourceNode.Scalar scalar)) {
      findings.add(
          value
              .refusal()
              .orElseGet(
                  () ->
                      ReadingFaults.WRONG_SHAPE
                          .at(
                              value.at(),
                              "an id is one word, and this is a list or a group of keys")
                          .help("write one id")));
      return Optional.empty();
    }
    if (scalar.nothing()) {
      findings.add(ReadingFaults.NO_VALUE.at(scalar.at(), "the id has no value").help(form(kind)));
      return Optional.empty();
    }
    String text = scalar.text().strip();
    String owner =
        kind == Kind.SOCKET || kind == Kind.MODE
            ? frame.machine().map(each -> each.slug() + "/").orElse("")
            : "";
    if (!ThingId.isId(kind, text) || owner.length() + text.length() > LONGEST) {
      findings.add(
          ReadingFaults.NOT_AN_ID
              .at(
                  scalar.at(),
                  Quote.of(text)
                      + (ThingId.isDevice(text)
                          ? " is the name of a device on some computers and cannot be an id"
                          : " is not the id of " + References.withArticle(References.noun(kind))))
              .help(ThingId.isDevice(text) ? "give it a longer id" : form(kind)));
      return Optional.empty();
    }
    return Optional.of(new Fact<>(new ThingId(kind, owner + text), scalar.at()));
  }

  private static String form(Kind kind) {
    return kind == Kind.ASSET
        ? "an asset number is made of letters and digits with single hyphens between, at most 60 in all"
        : "an id is made of small letters and digits with single hyphens between, at most 60 in all";
  }

  /**
   * Enters a thing, or what is left of a broken one. If the id is taken, both things are broken.
   */
  Optional<Thing> put(
      Fact<ThingId> id, Location at, Optional<Thing> whole, List<Problem> problems) {
    Optional<Thing> earlier = scope.find(id.value());
    if (earlier.isPresent()) {
      Problem twice = twice(id, earlier.orElseThrow().at());
      findings.add(twice);
      scope.markIncomplete(id.value().kind()); // the id that one of the two should have is missing
      scope.putBroken(id.value(), earlier.orElseThrow().at(), List.of(twice));
      return Optional.empty();
    }
    whole.ifPresentOrElse(scope::put, () -> scope.putBroken(id.value(), at, problems));
    return whole;
  }

  private static Problem twice(Fact<ThingId> id, Location earlier) {
    Kind kind = id.value().kind();
    String where =
        earlier.file().equals(id.at().file())
            ? "on line " + earlier.line()
            : "in " + earlier.file() + " on line " + earlier.line();
    return ReadingFaults.WRITTEN_TWICE
        .at(
            id.at(),
            "duplicate %s %s, first %s"
                .formatted(References.noun(kind), Quote.of(id.value().local()), where))
        .note(earlier, "the first of this id")
        .help("give one of the two another id, or remove it");
  }
}
