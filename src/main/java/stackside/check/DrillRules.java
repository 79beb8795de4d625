package stackside.check;

import static stackside.check.Rule.error;
import static stackside.check.Rule.note;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import stackside.derive.drill.DrillOrder;
import stackside.model.Checklist;
import stackside.model.ChecklistKind;
import stackside.model.Drill;
import stackside.model.Fact;
import stackside.model.Kind;
import stackside.model.LampId;
import stackside.model.Machine;
import stackside.model.ThingId;
import stackside.model.Unit;

/** Drills and checklists in themselves. */
final class DrillRules {

  private DrillRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "lamp-unknown",
            "a drill's sign names a lamp that no machine has",
            DrillRules::lampUnknown),
        error(
            "drill-mends-nothing",
            "a drill for a machine's sign has no check that mends a fault",
            DrillRules::drillMendsNothing),
        error(
            "check-out-of-order",
            "a check of a drill comes before one that must come first",
            DrillRules::checkOutOfOrder),
        note(
            "drill-order-slow",
            "the unit's own counts show that another order of checks is quicker",
            DrillRules::drillOrderSlow),
        error(
            "set-up-checklist-missing",
            "a machine in a room has no set-up checklist",
            DrillRules::setUpChecklistMissing),
        error(
            "checklist-twice",
            "a machine has two checklists for the same moment",
            DrillRules::checklistTwice),
        error(
            "guard-without-sight",
            "a step guards against a fault but does not say what to see",
            DrillRules::guardWithoutSight));
  }

  private static List<Finding> lampUnknown(CheckedUnit checked) {
    Unit unit = checked.unit();
    if (unit.anyBroken(Kind.MACHINE)) {
      return List.of();
    }
    return unit.drills().stream().flatMap(drill -> lampUnknown(unit, drill).stream()).toList();
  }

  private static List<Finding> lampUnknown(Unit unit, Drill drill) {
    List<Finding> found = new ArrayList<>();
    drill
        .sign()
        .lamps()
        .forEach(
            (lamp, colour) -> {
              if (machines(unit, drill).noneMatch(it -> it.lamp(lamp).isPresent())) {
                found.add(lampUnknown(drill, lamp, colour));
              }
            });
    return found;
  }

  private static Stream<Machine> machines(Unit unit, Drill drill) {
    return unit.machines().stream().filter(drill.appliesTo()::holds);
  }

  private static Finding lampUnknown(Drill drill, LampId lamp, Fact<String> colour) {
    return Finding.at(
            colour.at(),
            "no machine that %s is for has a lamp '%s'".formatted(Wording.quoted(drill), lamp))
        .help("use a lamp id from 'lamps' in the machine's description");
  }

  private static List<Finding> drillMendsNothing(CheckedUnit checked) {
    return checked.unit().drills().stream()
        .filter(drill -> drill.sign().ofMachine())
        .filter(drill -> drill.checks().stream().allMatch(check -> check.mends().isEmpty()))
        .map(
            drill ->
                Finding.at(
                        drill.name().at(),
                        "no check of %s mends anything".formatted(Wording.quoted(drill)))
                    .help("use 'mends' to say which fault each check finds and mends"))
        .toList();
  }

  private static List<Finding> checkOutOfOrder(CheckedUnit checked) {
    List<Finding> found = new ArrayList<>();
    for (Drill drill : checked.unit().drills()) {
      for (int i = 0; i < drill.checks().size(); i++) {
        int number = i + 1;
        drill.checks().get(i).after().stream()
            .filter(first -> first.value() < 1 || first.value() >= number)
            .forEach(first -> found.add(checkOutOfOrder(drill, number, first)));
      }
    }
    return found;
  }

  private static Finding checkOutOfOrder(Drill drill, int number, Fact<Integer> first) {
    String message;
    if (first.value() < 1 || first.value() > drill.checks().size()) {
      message = Wording.quoted(drill) + " has no check " + first.value();
    } else if (first.value() == number) {
      message = "check " + number + " cannot come after itself";
    } else {
      message =
          "check %s must come after check %s, but comes before it".formatted(number, first.value());
    }
    return Finding.at(first.at(), message).help("checks are counted from 1, in the order written");
  }

  private static List<Finding> drillOrderSlow(CheckedUnit checked) {
    return checked.analysis().drillOrders().stream()
        .filter(DrillOrder::couldBeSooner)
        .map(DrillRules::drillOrderSlow)
        .toList();
  }

  private static Finding drillOrderSlow(DrillOrder order) {
    return Finding.at(
            order.drill().name().at(),
            "judging by %s counted causes, the checks of %s find the cause after %s s on average; in the order %s they would take %s s"
                .formatted(
                    order.counted(),
                    Wording.quoted(order.drill()),
                    Math.round(order.written()),
                    Wording.list(order.order().stream().map(String::valueOf).toList()),
                    Math.round(order.best())))
        .help("reorder the checks, or use 'after' to say which must come first");
  }

  private static List<Finding> setUpChecklistMissing(CheckedUnit checked) {
    Unit unit = checked.unit();
    if (unit.anyBroken(Kind.CHECKLIST)) {
      return List.of();
    }
    return unit.machines().stream()
        .filter(machine -> !unit.roomsWith(machine).isEmpty())
        .filter(machine -> unit.checklistsFor(machine).stream().noneMatch(DrillRules::isSetUp))
        .map(
            machine ->
                Finding.at(
                        machine.name().at(),
                        "there is no set-up checklist for " + Wording.quoted(machine))
                    .help(
                        "add a checklist with 'kind: set-up', or name the machine under 'for' in an existing one"))
        .toList();
  }

  private static boolean isSetUp(Checklist list) {
    return list.kind().value() == ChecklistKind.SET_UP;
  }

  /** A checklist that gets in the way of several others is reported once. */
  private static List<Finding> checklistTwice(CheckedUnit checked) {
    Unit unit = checked.unit();
    Set<ThingId> told = new LinkedHashSet<>();
    List<Finding> found = new ArrayList<>();
    for (Machine machine : unit.machines()) {
      List<Checklist> lists = unit.checklistsFor(machine);
      for (int i = 1; i < lists.size(); i++) {
        Checklist before = lists.get(i - 1);
        Checklist list = lists.get(i);
        boolean known = told.contains(before.id()) || told.contains(list.id());
        if (list.kind().value() == before.kind().value() && !known) {
          found.add(checklistTwice(machine, before, list));
          told.add(before.id());
          told.add(list.id());
        }
      }
    }
    return found;
  }

  private static Finding checklistTwice(Machine machine, Checklist before, Checklist list) {
    return Finding.at(
            list.kind().at(),
            "%s has two %s checklists, '%s' and '%s'"
                .formatted(
                    Wording.quoted(machine),
                    list.kind().value().word(),
                    before.id().slug(),
                    list.id().slug()))
        .note(before.kind().at(), "the other one")
        .help("say under 'for' which machines each is for");
  }

  private static List<Finding> guardWithoutSight(CheckedUnit checked) {
    return checked.unit().checklists().stream()
        .flatMap(list -> list.steps().stream())
        .filter(step -> !step.guards().isEmpty() && step.see().isEmpty())
        .map(
            step ->
                Finding.at(
                        step.action().at(),
                        "this step guards against '%s' but does not say what to see"
                            .formatted(step.guards().get(0).value().word()))
                    .help("add 'see' with what it looks like when it is right"))
        .toList();
  }
}
