package stackside.check;

import static stackside.check.Rule.error;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.derive.circuit.FailureSign;
import stackside.derive.circuit.Mending;
import stackside.derive.circuit.Observation;
import stackside.derive.circuit.OutcomeClass;
import stackside.model.Checklist;
import stackside.model.ChecklistKind;
import stackside.model.Condition;
import stackside.model.Drill;
import stackside.model.Kind;
import stackside.model.Machine;
import stackside.model.Response;
import stackside.model.ThingId;
import stackside.model.Tone;
import stackside.model.Unit;
import stackside.source.Location;

/** What staff see and hear when one thing goes wrong: set-up steps and drills for it. */
final class FailureSignRules {

  private FailureSignRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "silent-outcome-unguarded",
            "a fault passes unnoticed, and no set-up step guards against it",
            FailureSignRules::silentOutcomeUnguarded),
        error(
            "silent-outcome-unmended",
            "a fault passes unnoticed, and no drill mends it",
            FailureSignRules::silentOutcomeUnmended),
        error(
            "sign-without-drill",
            "a sign that a machine shows has no drill",
            FailureSignRules::signWithoutDrill),
        error(
            "sign-with-two-drills",
            "two drills begin with the same sign",
            FailureSignRules::signWithTwoDrills),
        error(
            "sign-never-shown",
            "no fault shows the sign that a drill begins with",
            FailureSignRules::signNeverShown),
        error(
            "drill-misses-cause",
            "a drill's sign can come from a fault that none of its checks mends",
            FailureSignRules::drillMissesCause));
  }

  /** Leaves an empty argon cylinder to the argon rules. */
  private static List<Finding> silentOutcomeUnguarded(CheckedUnit checked) {
    Unit unit = checked.unit();
    if (unit.anyBroken(Kind.CHECKLIST)) {
      return List.of();
    }
    Map<Checklist, List<FailureSign>> unguarded = new LinkedHashMap<>();
    for (FailureSign sign : Consequences.of(checked.analysis())) {
      if (sign.outcomeClass().silent() && sign.guards().isEmpty()) {
        setUp(unit, sign.machine())
            .ifPresent(list -> unguarded.computeIfAbsent(list, it -> new ArrayList<>()).add(sign));
      }
    }
    return unguarded.entrySet().stream()
        .map(entry -> silentOutcomeUnguarded(entry.getKey(), entry.getValue()))
        .toList();
  }

  private static Optional<Checklist> setUp(Unit unit, Machine machine) {
    return unit.checklistsFor(machine).stream()
        .filter(list -> list.kind().value() == ChecklistKind.SET_UP)
        .findFirst();
  }

  private static Finding silentOutcomeUnguarded(Checklist list, List<FailureSign> signs) {
    FailureSign worst = signs.get(0);
    Finding finding =
        Finding.at(
                list.kind().at(),
                "no step of this set-up guards against %s, which passes unnoticed on %s"
                    .formatted(faults(signs), machines(signs)))
            .note(
                worst.outcomes().get(0).profile().at(),
                "with this profile, for example, " + Consequences.words(worst.outcomeClass()));
    for (FailureSign sign : signs) {
      if (Consequences.undescribed(sign)) {
        finding =
            finding.note(
                sign.machine().name().at(),
                "how the machine answers '%s' is not described, so it counts as unnoticed"
                    .formatted(sign.condition().map(Condition::word).orElse(sign.fault().word())));
      }
    }
    return finding.help(
        "add a step that looks, traces or reads aloud, with these words under 'guards'");
  }

  private static List<Finding> silentOutcomeUnmended(CheckedUnit checked) {
    if (checked.unit().anyBroken(Kind.DRILL)) {
      return List.of();
    }
    Map<Drill, List<FailureSign>> unmended = new LinkedHashMap<>();
    for (FailureSign sign : Consequences.of(checked.analysis())) {
      if (silentAndUnmended(sign) && !leftToTheSetUp(sign)) {
        sign.fitting().stream()
            .findFirst()
            .ifPresent(drill -> unmended.computeIfAbsent(drill, it -> new ArrayList<>()).add(sign));
      }
    }
    return unmended.entrySet().stream()
        .map(entry -> silentOutcomeUnmended(entry.getKey(), entry.getValue()))
        .toList();
  }

  private static Finding silentOutcomeUnmended(Drill drill, List<FailureSign> signs) {
    FailureSign worst = signs.get(0);
    return Finding.at(
            drill.sign().at(),
            "no drill mends %s, which passes unnoticed on %s and looks and sounds like this"
                .formatted(faults(signs), machines(signs)))
        .note(
            worst.outcomes().get(0).profile().at(),
            "with this profile, for example, " + Consequences.words(worst.outcomeClass()))
        .help("add a check that mends it to this drill");
  }

  private static List<Finding> signWithoutDrill(CheckedUnit checked) {
    if (checked.unit().anyBroken(Kind.DRILL)) {
      return List.of();
    }
    Map<Tone, List<FailureSign>> lost = new LinkedHashMap<>();
    for (FailureSign sign : Consequences.of(checked.analysis())) {
      if (sign.outcomeClass() != OutcomeClass.RIGHT
          && sign.fitting().isEmpty()
          && !meantByAnother(checked.analysis(), sign)) {
        lost.computeIfAbsent(sign.observed().tone(), it -> new ArrayList<>()).add(sign);
      }
    }
    return lost.values().stream().map(FailureSignRules::signWithoutDrill).toList();
  }

  /** If a drill mends the fault but its own sign never appears, the sign is wrong. */
  private static boolean meantByAnother(Analysis analysis, FailureSign sign) {
    return sign.drills().stream()
        .map(Mending::drill)
        .filter(drill -> drill.sign().ofMachine())
        .anyMatch(
            drill ->
                analysis.circuits().signs().stream()
                    .noneMatch(other -> other.fitting().contains(drill)));
  }

  /** One message for all faults that show the same signs, because one drill is missing. */
  private static Finding signWithoutDrill(List<FailureSign> alike) {
    FailureSign first = alike.get(0);
    Finding finding =
        Finding.at(
            described(first),
            "no drill for %s begins with this sign: %s; it comes from %s"
                .formatted(machines(alike), words(first.observed()), faults(alike)));
    List<Location> others =
        alike.stream()
            .filter(it -> !it.machine().id().equals(first.machine().id()))
            .map(FailureSignRules::described)
            .distinct()
            .toList();
    for (Location other : others) {
      finding = finding.note(other, "the same sign here");
    }
    return finding.help(
        "add a drill with this sign, or make the sign of a drill that mends it less specific");
  }

  private static Location described(FailureSign sign) {
    return sign.condition()
        .flatMap(it -> Optional.ofNullable(sign.machine().answers().get(it)))
        .map(Response::at)
        .orElse(sign.machine().name().at());
  }

  private static String words(Observation observed) {
    List<String> words = new ArrayList<>();
    words.add(observed.tone() == Tone.NONE ? "no tone" : observed.tone().spoken() + " tone");
    observed.lamps().forEach((lamp, colour) -> words.add("lamp '" + lamp + "' " + colour));
    observed.display().ifPresent(text -> words.add("display '" + text + "'"));
    return String.join(", ", words);
  }

  private static List<Finding> signWithTwoDrills(CheckedUnit checked) {
    Map<ThingId, Finding> found = new LinkedHashMap<>();
    for (FailureSign sign : Consequences.of(checked.analysis())) {
      for (int i = 1; i < sign.fitting().size(); i++) {
        Drill first = sign.fitting().get(0);
        Drill other = sign.fitting().get(i);
        if (lampsExist(sign.machine(), first, other) && !first.sign().contradicts(other.sign())) {
          found.putIfAbsent(other.id(), signWithTwoDrills(sign, first, other));
        }
      }
    }
    return List.copyOf(found.values());
  }

  private static boolean lampsExist(Machine machine, Drill... drills) {
    return Stream.of(drills)
        .flatMap(drill -> drill.sign().lamps().keySet().stream())
        .allMatch(lamp -> machine.lamp(lamp).isPresent());
  }

  private static Finding signWithTwoDrills(FailureSign sign, Drill first, Drill other) {
    return Finding.at(
            other.sign().at(),
            "on %s both this sign and that of %s fit '%s'"
                .formatted(
                    Wording.quoted(sign.machine()), Wording.quoted(first), sign.fault().word()))
        .note(first.sign().at(), "the other sign")
        .help("merge the two drills, or make each sign say what tells them apart");
  }

  private static List<Finding> signNeverShown(CheckedUnit checked) {
    if (!checked.unit().broken().isEmpty()) {
      return List.of();
    }
    List<FailureSign> signs = checked.analysis().circuits().signs();
    return checked.unit().drills().stream()
        .filter(drill -> drill.sign().ofMachine())
        .filter(drill -> lampsExist(checked.unit(), drill))
        .filter(drill -> signs.stream().anyMatch(it -> drill.appliesTo().holds(it.machine())))
        .filter(drill -> signs.stream().noneMatch(it -> it.fitting().contains(drill)))
        .map(FailureSignRules::signNeverShown)
        .toList();
  }

  /** A lamp that no machine has is reported by another rule. */
  private static boolean lampsExist(Unit unit, Drill drill) {
    return drill.sign().lamps().keySet().stream()
        .allMatch(
            lamp ->
                unit.machines().stream()
                    .filter(drill.appliesTo()::holds)
                    .anyMatch(machine -> machine.lamp(lamp).isPresent()));
  }

  private static Finding signNeverShown(Drill drill) {
    return Finding.at(
            drill.sign().at(),
            "no single fault on the machines that %s is for looks and sounds like this"
                .formatted(Wording.quoted(drill)))
        .help("compare tone, lamps and display with the machines' 'answers'");
  }

  private static List<Finding> drillMissesCause(CheckedUnit checked) {
    if (checked.unit().anyBroken(Kind.DRILL)) {
      return List.of();
    }
    Map<Drill, List<FailureSign>> missed = new LinkedHashMap<>();
    for (FailureSign sign : Consequences.of(checked.analysis())) {
      if (sign.outcomeClass() != OutcomeClass.RIGHT
          && sign.drills().stream().noneMatch(Mending::fits)
          && !silentAndUnmended(sign)
          && !leftToTheSetUp(sign)) {
        sign.fitting().stream()
            .filter(FailureSignRules::mendsSomething)
            .findFirst()
            .ifPresent(drill -> missed.computeIfAbsent(drill, it -> new ArrayList<>()).add(sign));
      }
    }
    return missed.entrySet().stream()
        .map(entry -> drillMissesCause(entry.getKey(), entry.getValue()))
        .toList();
  }

  private static boolean silentAndUnmended(FailureSign sign) {
    return sign.outcomeClass().silent() && sign.drills().isEmpty();
  }

  /** If nothing at all is described, the set-up rules report that first. */
  private static boolean leftToTheSetUp(FailureSign sign) {
    return Consequences.undescribed(sign) && sign.guards().isEmpty();
  }

  /** A drill that mends nothing at all is reported by another rule. */
  private static boolean mendsSomething(Drill drill) {
    return drill.checks().stream().anyMatch(check -> !check.mends().isEmpty());
  }

  private static Finding drillMissesCause(Drill drill, List<FailureSign> signs) {
    return Finding.at(
            drill.sign().at(),
            "this sign also comes from %s on %s, but no check of the drill mends that"
                .formatted(faults(signs), machines(signs)))
        .help("add a check that mends it, or make the sign say what tells the two apart");
  }

  private static String faults(List<FailureSign> signs) {
    return Wording.list(signs.stream().map(it -> "'" + it.fault().word() + "'").toList());
  }

  private static String machines(List<FailureSign> signs) {
    return Wording.quoted(signs.stream().map(FailureSign::machine).toList());
  }
}
