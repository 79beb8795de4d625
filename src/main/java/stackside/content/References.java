package stackside.content;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stackside.model.Accessory;
import stackside.model.Asset;
import stackside.model.Broken;
import stackside.model.Cable;
import stackside.model.Citation;
import stackside.model.Electrode;
import stackside.model.FootSwitch;
import stackside.model.Instrument;
import stackside.model.Kind;
import stackside.model.Lesion;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.model.PatientGroup;
import stackside.model.Premises;
import stackside.model.Role;
import stackside.model.Site;
import stackside.model.SiteChoice;
import stackside.model.Socket;
import stackside.model.Step;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.source.Location;
import stackside.source.Problem;

/**
 * Finds the things that ids name. An unknown id is one problem. A thing that is broken is not
 * found, and causes no further problem.
 */
final class References {
  private static final Map<Class<?>, List<Kind>> KINDS =
      Map.ofEntries(
          Map.entry(Premises.class, List.of(Kind.LOCATION)),
          Map.entry(Role.class, List.of(Kind.ROLE)),
          Map.entry(PatientGroup.class, List.of(Kind.PATIENT_GROUP)),
          Map.entry(Machine.class, List.of(Kind.MACHINE)),
          Map.entry(Socket.class, List.of(Kind.SOCKET)),
          Map.entry(Mode.class, List.of(Kind.MODE)),
          Map.entry(Asset.class, List.of(Kind.ASSET)),
          Map.entry(Instrument.class, List.of(Kind.INSTRUMENT)),
          Map.entry(Cable.class, List.of(Kind.CABLE)),
          Map.entry(Electrode.class, List.of(Kind.ELECTRODE)),
          Map.entry(Accessory.class, List.of(Kind.INSTRUMENT, Kind.CABLE, Kind.ELECTRODE)),
          Map.entry(FootSwitch.class, List.of(Kind.FOOT_SWITCH)),
          Map.entry(Site.class, List.of(Kind.SITE)),
          Map.entry(SiteChoice.class, List.of(Kind.SITE, Kind.SITE_GROUP)),
          Map.entry(Step.class, List.of(Kind.STEP)),
          Map.entry(Lesion.class, List.of(Kind.LESION)),
          Map.entry(Citation.class, List.of(Kind.CITATION)));

  private final SymbolTable scope;
  private final Findings findings;
  private final Map<String, List<String>> nearNames = new HashMap<>();

  References(SymbolTable scope, Findings findings) {
    this.scope = scope;
    this.findings = findings;
  }

  /** The thing of a type that an id names, or empty if it is unknown or broken. */
  Optional<Object> resolve(Class<?> type, String text, Location at, BindingContext frame) {
    List<Kind> kinds = KINDS.get(type);
    if (kinds == null) {
      throw new IllegalStateException("nothing refers to a " + type);
    }
    boolean owned = kinds.contains(Kind.SOCKET) || kinds.contains(Kind.MODE);
    if (owned && frame.machine().isEmpty()) {
      return Optional.empty();
    }
    Optional<ThingId> owner = owned ? frame.machine() : Optional.empty();
    List<Thing> found =
        kinds.stream()
            .flatMap(kind -> id(kind, text, owner).flatMap(scope::find).stream())
            .toList();
    if (found.size() > 1) {
      findings.add(ambiguous(text, at, found));
      return Optional.empty();
    }
    if (found.isEmpty() && kinds.stream().noneMatch(scope::isIncomplete)) {
      String whole = owner.map(each -> each.slug() + "/").orElse("") + text;
      findings.add(
          unknown(kinds, text, at, owner),
          new Findings.Missing(kinds, whole, only(kinds, near(kinds, text, owner), owner)));
    }
    return found.stream().filter(thing -> !(thing instanceof Broken)).findFirst().map(each -> each);
  }

  private static Optional<ThingId> id(Kind kind, String text, Optional<ThingId> owner) {
    return ThingId.isId(kind, text)
        ? Optional.of(new ThingId(kind, owner.map(each -> each.slug() + "/").orElse("") + text))
        : Optional.empty();
  }

  private static Problem ambiguous(String text, Location at, List<Thing> found) {
    Problem problem =
        ReadingFaults.AMBIGUOUS_REFERENCE
            .at(
                at,
                Quote.of(text)
                    + " is "
                    + found.stream()
                        .map(References::described)
                        .collect(Collectors.joining(" and ")))
            .help("give one of the two another id");
    for (Thing thing : found) {
      problem = problem.note(thing.at(), described(thing) + " of this id");
    }
    return problem;
  }

  private static String described(Thing thing) {
    return withArticle(noun(thing.id().kind()));
  }

  static String withArticle(String noun) {
    return ("aeiou".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
  }

  private Problem unknown(List<Kind> kinds, String text, Location at, Optional<ThingId> owner) {
    String noun = kinds.stream().map(References::noun).collect(Collectors.joining(" or "));
    String message =
        owner
            .map(each -> "machine '" + each.slug() + "' has no " + noun + " " + Quote.of(text))
            .orElse("there is no " + noun + " " + Quote.of(text));
    List<String> near = near(kinds, text, owner);
    return ReadingFaults.UNKNOWN_REFERENCE
        .at(at, message)
        .help(near.isEmpty() ? homes(kinds, noun) : NearNames.question(near));
  }

  /** A kind of thing as messages call it. */
  static String noun(Kind kind) {
    return switch (kind) {
      case PATIENT_GROUP -> "patient group";
      case ELECTRODE -> "neutral electrode";
      case HANDBOOK -> "handbook page";
      default -> kind.spoken();
    };
  }

  private static String homes(List<Kind> kinds, String noun) {
    return "every "
        + noun
        + " is described in "
        + kinds.stream().map(Layout::home).distinct().collect(Collectors.joining(" or "));
  }

  /** The thing that a near name means, if no other is near. */
  private Optional<Thing> only(List<Kind> kinds, List<String> near, Optional<ThingId> owner) {
    return near.size() == 1
        ? kinds.stream()
            .flatMap(kind -> id(kind, near.get(0), owner).flatMap(scope::find).stream())
            .findFirst()
        : Optional.empty();
  }

  /** Near names of a text are asked for often where one id is wrong in many places. */
  private List<String> near(List<Kind> kinds, String text, Optional<ThingId> owner) {
    return nearNames.computeIfAbsent(
        kinds + " " + owner + " " + text, any -> NearNames.of(text, scope.names(kinds, owner)));
  }

  /** Checks that what a link or a mention names exists. Only an unknown name is a problem. */
  void check(ThingId id, Location at) {
    if (scope.find(id).isPresent() || scope.isIncomplete(id.kind()) || ownerIsNotWhole(id)) {
      return;
    }
    List<String> near =
        nearNames.computeIfAbsent(
            id.toString(),
            any -> NearNames.of(id.slug(), scope.names(List.of(id.kind()), Optional.empty())));
    List<String> links = near.stream().map(slug -> id.kind().word() + ":" + slug).toList();
    findings.add(
        ReadingFaults.UNKNOWN_REFERENCE
            .at(at, "there is no " + noun(id.kind()) + " " + Quote.of(id.slug()))
            .help(
                near.isEmpty()
                    ? homes(List.of(id.kind()), noun(id.kind()))
                    : NearNames.question(links)),
        new Findings.Missing(
            List.of(id.kind()), id.slug(), only(List.of(id.kind()), near, Optional.empty())));
  }

  private boolean ownerIsNotWhole(ThingId id) {
    int slash = id.slug().indexOf('/');
    if (slash < 0) {
      return false;
    }
    return scope
        .find(new ThingId(Kind.MACHINE, id.slug().substring(0, slash)))
        .filter(Broken.class::isInstance)
        .isPresent();
  }
}
