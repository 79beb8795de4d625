package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.model.AppliesTo;
import stackside.model.Checklist;
import stackside.model.ChecklistStep;
import stackside.model.Contact;
import stackside.model.Drill;
import stackside.model.DrillCheck;
import stackside.model.Fact;
import stackside.model.LampId;
import stackside.model.Machine;
import stackside.model.Premises;
import stackside.model.Sign;
import stackside.model.SingleFault;
import stackside.render.DrillChart;
import stackside.render.Links;
import stackside.render.Numbers;
import stackside.render.Sheet;
import stackside.render.site.Part.Facts;
import stackside.render.site.Part.Steps;

/** Drills and checklists: what to do, step by step. */
final class DrillPages implements Pages {

  @Override
  public Stream<Page> of(Website site) {
    return Stream.of(
            Stream.of(drills(site), checklists(site)),
            site.unit().drills().stream().map(drill -> page(drill, site)),
            site.unit().checklists().stream().map(list -> page(list, site)))
        .flatMap(pages -> pages);
  }

  private static Page drills(Website site) {
    PageContext here = site.at("drills.html");
    List<Part.Grid.GridRow> rows =
        site.unit().drills().stream()
            .map(
                drill ->
                    Part.Grid.GridRow.of(
                        here.link(drill),
                        RichLine.of(sign(drill, here)),
                        machines(drill.appliesTo(), here)))
            .toList();
    return new PlainPage(
        here.frame(here.say("menu.drills")),
        "plain",
        Optional.of(RichLine.of(here.say("drills.lead"))),
        List.of(
            here.section(
                "drills",
                new Part.Grid(
                    here.say("section.drills"),
                    List.of(
                        here.say("column.drill"),
                        here.say("column.sign"),
                        here.say("fact.machine")),
                    rows))));
  }

  private static Page checklists(Website site) {
    PageContext here = site.at("checklists.html");
    List<Part.Grid.GridRow> rows =
        site.unit().checklists().stream()
            .map(
                list ->
                    Part.Grid.GridRow.of(
                        here.link(list),
                        RichLine.of(here.choice(list.kind().value())),
                        machines(list.appliesTo(), here)))
            .toList();
    return new PlainPage(
        here.frame(here.say("menu.checklists")),
        "plain",
        Optional.empty(),
        List.of(
            here.section(
                "checklists",
                new Part.Grid(
                    here.say("section.checklists"),
                    List.of(
                        here.say("column.checklist"),
                        here.say("column.when"),
                        here.say("fact.machine")),
                    rows))));
  }

  private static RichLine machines(AppliesTo appliesTo, PageContext here) {
    return appliesTo.machines().isEmpty()
        ? RichLine.of(here.say("applies.all"))
        : here.listed(appliesTo.machines());
  }

  /** What is seen and heard, in words; a lamp by every name that the drill's machines give it. */
  static String sign(Drill drill, PageContext here) {
    List<Machine> named =
        drill.appliesTo().machines().isEmpty()
            ? here.unit().machines()
            : drill.appliesTo().machines().stream().map(Fact::value).toList();
    return sign(drill.sign(), named, here);
  }

  /** The same with the names of some machines' lamps. */
  static String sign(Sign sign, List<Machine> machines, PageContext here) {
    List<String> words = new ArrayList<>();
    sign.tone().ifPresent(tone -> words.add(here.say("tone." + tone.value().word())));
    sign.lamps()
        .forEach((lamp, colour) -> words.add(lamp(lamp, machines, here) + " " + colour.value()));
    sign.display().ifPresent(shown -> words.add(here.say("sign.display", shown.value())));
    sign.tissue().ifPresent(tissue -> words.add(tissue.value()));
    return String.join("; ", words);
  }

  private static String lamp(LampId lamp, List<Machine> machines, PageContext here) {
    boolean known = machines.stream().anyMatch(machine -> machine.lamp(lamp).isPresent());
    return here.words()
        .either(
            machines.stream()
                .filter(machine -> !known || machine.lamp(lamp).isPresent())
                .map(machine -> machine.lampName(lamp))
                .distinct()
                .toList());
  }

  private static Page page(Drill drill, Website site) {
    PageContext here = site.at("drills/" + drill.id().slug() + ".html");
    List<Section> sections = new ArrayList<>();
    sections.add(
        here.section(
            "make-safe",
            new Part.Say(RichLine.of(here.say("drill.sign", sign(drill, here)))),
            new Part.Box("", List.of(RichLine.of(drill.makeSafe().value()))),
            new Part.Say(here.page(here.say("drill.practise"), PracticePages.path(drill)))));
    List<Steps.Step> steps = new ArrayList<>();
    drill.checks().forEach(check -> steps.add(step(check, here)));
    sections.add(
        new Section(
            "checks",
            here.say(mends(drill) ? "section.checks" : "section.afterwards"),
            List.of(new Steps(steps))));
    order(drill, here).ifPresent(sections::add);
    drill
        .never()
        .ifPresent(
            never ->
                sections.add(
                    here.section("never", new Part.Box("", List.of(RichLine.of(never.value()))))));
    sections.add(escalate(drill, here));
    sections.add(here.section("chart", chart(drill, here)));
    sections.add(
        here.section(
            "facts",
            new Facts(List.of(Answers.fact(here, "machine", machines(drill.appliesTo(), here))))));
    sections.add(here.mentions(drill.id()));
    return new PlainPage(
        here.frame(drill.title(), here.page(here.say("menu.drills"), "drills.html"))
            .due(here.review(drill.id())),
        "drill",
        Optional.empty(),
        sections);
  }

  private static Part chart(Drill drill, PageContext here) {
    DrillChart.Plan plan =
        new DrillChart.Plan(
            drill.title(),
            sign(drill, here),
            drill.makeSafe().value(),
            drill.checks().stream()
                .map(
                    check ->
                        new DrillChart.Check(
                            check.action().value(),
                            check.see().map(see -> see.value()),
                            !check.mends().isEmpty()))
                .toList(),
            here.say(drill.escalate().value() ? "drill.chart-escalate" : "drill.chart-end"),
            here.words());
    return here.figure(
        "chart",
        DrillChart.of(plan, Sheet.PAGE),
        DrillChart.of(plan, Sheet.PHONE),
        Optional.empty());
  }

  /** Compares the written order with the one that the unit's own counts suggest. */
  private static Optional<Section> order(Drill drill, PageContext here) {
    return here.site().analysis().drillOrders().stream()
        .filter(order -> order.drill().id().equals(drill.id()))
        .findFirst()
        .map(
            order ->
                here.section(
                    "order",
                    new Part.Say(
                        RichLine.of(
                            order.couldBeSooner()
                                ? here.say(
                                    "drill.order-sooner",
                                    Math.round(order.written()),
                                    Math.round(order.best()),
                                    order.order().stream()
                                        .map(String::valueOf)
                                        .collect(Collectors.joining(", ")),
                                    order.counted())
                                : here.say(
                                    "drill.order-best",
                                    Math.round(order.written()),
                                    order.counted())))));
  }

  private static Steps.Step step(DrillCheck check, PageContext here) {
    List<RichLine> notes = new ArrayList<>();
    if (!check.mends().isEmpty()) {
      notes.add(RichLine.of(here.say("drill.mends", faults(check.mends(), here))));
    }
    check
        .takes()
        .ifPresent(
            takes -> notes.add(RichLine.of(here.say("drill.takes", Numbers.text(takes.value())))));
    if (!check.needs().isEmpty()) {
      notes.add(RichLine.of(here.say("drill.needs") + " ").then(here.listed(check.needs())));
    }
    return new Steps.Step(
        RichLine.of(check.action().value()), check.see().map(see -> RichLine.of(see.value())), notes);
  }

  private static String faults(List<Fact<SingleFault>> faults, PageContext here) {
    return String.join(
        "; ", faults.stream().map(fault -> here.say("fault." + fault.value().word())).toList());
  }

  /**
   * Whether the drill mends anything. What to do after a fault is also drilled, but mends nothing.
   */
  private static boolean mends(Drill drill) {
    return drill.checks().stream().anyMatch(check -> !check.mends().isEmpty());
  }

  private static Section escalate(Drill drill, PageContext here) {
    String heading = here.say(mends(drill) ? "section.escalate" : "section.escalate-after");
    if (!drill.escalate().value()) {
      return new Section(
          "escalate", heading, List.of(new Part.Say(RichLine.of(here.say("drill.no-escalation")))));
    }
    List<Facts.Fact> facts = new ArrayList<>();
    for (Premises location : here.unit().details().locations()) {
      facts.add(
          new Facts.Fact(
              location.title(), location.contacts().stream().map(DrillPages::contact).toList()));
    }
    return new Section(
        "escalate",
        heading,
        List.of(new Part.Say(RichLine.of(here.say("drill.escalate"))), new Facts(facts)));
  }

  static RichLine contact(Contact contact) {
    return RichLine.of(
        TextPiece.strong(contact.phone().value()),
        TextPiece.of(" " + contact.title() + ", " + contact.hours().value().words()));
  }

  private static Page page(Checklist list, Website site) {
    PageContext here = site.at(Links.to(list.id()).page());
    List<Steps.Step> steps = new ArrayList<>();
    for (ChecklistStep step : list.steps()) {
      List<RichLine> notes =
          step.guards().isEmpty()
              ? List.of()
              : List.of(RichLine.of(here.say("checklist.guards", faults(step.guards(), here))));
      steps.add(
          new Steps.Step(
              RichLine.of(step.action().value()), step.see().map(see -> RichLine.of(see.value())), notes));
    }
    return new PlainPage(
        here.frame(list.title(), here.page(here.say("menu.checklists"), "checklists.html"))
            .due(here.review(list.id())),
        "drill",
        Optional.of(machines(list.appliesTo(), here)),
        List.of(here.section("steps-of-list", new Steps(steps)), here.mentions(list.id())));
  }
}
