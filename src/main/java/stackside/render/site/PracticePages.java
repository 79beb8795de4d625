package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.model.Drill;
import stackside.model.DrillCheck;
import stackside.model.Premises;
import stackside.render.site.PracticePage.Stage;

/** Drills to walk through step by step, from the sign to whom to call. */
final class PracticePages implements Pages {

  @Override
  public Stream<Page> of(Website site) {
    return site.unit().drills().stream().map(drill -> page(drill, site));
  }

  static String path(Drill drill) {
    return "practice/" + drill.id().slug() + ".html";
  }

  /** Links to all of them, for the page of paths. */
  static List<RichLine> links(PageContext here) {
    return here.unit().drills().stream()
        .map(drill -> here.page(here.say("practice.title", drill.title()), path(drill)))
        .toList();
  }

  private static Page page(Drill drill, Website site) {
    PageContext here = site.at(path(drill));
    return new PracticePage(
        here.frame(
            here.say("practice.title", drill.title()),
            here.page(here.say("menu.drills"), "drills.html"),
            here.link(drill)),
        drill.id().slug(),
        here.link(drill),
        stages(drill, here));
  }

  private static List<Stage> stages(Drill drill, PageContext here) {
    List<Stage> stages = new ArrayList<>();
    stages.add(stage("sign", RichLine.of(DrillPages.sign(drill, here)), "stage-sign", here));
    stages.add(stage("make-safe", RichLine.of(drill.makeSafe().value()), "stage-safe", here));
    int number = 0;
    for (DrillCheck check : drill.checks()) {
      number++;
      stages.add(
          new Stage(
              here.say("practice.check", number, drill.checks().size()),
              List.of(RichLine.of(check.action().value())),
              check.see().map(see -> RichLine.of(see.value())),
              "stage-check"));
    }
    drill
        .never()
        .ifPresent(
            never -> stages.add(stage("never", RichLine.of(never.value()), "stage-never", here)));
    stages.add(end(drill, here));
    return stages;
  }

  private static Stage stage(String name, RichLine does, String style, PageContext here) {
    return new Stage(here.say("practice." + name), List.of(does), Optional.empty(), style);
  }

  private static Stage end(Drill drill, PageContext here) {
    List<RichLine> does = new ArrayList<>();
    if (drill.escalate().value()) {
      for (Premises location : here.unit().details().locations()) {
        location
            .contacts()
            .forEach(
                contact ->
                    does.add(RichLine.of(location.title() + ": ").then(DrillPages.contact(contact))));
      }
    } else {
      does.add(RichLine.of(here.say("drill.no-escalation")));
    }
    return new Stage(
        here.say(drill.escalate().value() ? "practice.escalate" : "practice.end"),
        does,
        Optional.empty(),
        "stage-end");
  }
}
