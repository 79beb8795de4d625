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
  public Stream<Page> of(Site site) {
    return site.unit().drills().stream().map(drill -> page(drill, site));
  }

  static String path(Drill drill) {
    return "practice/" + drill.id().slug() + ".html";
  }

  /** Links to all of them, for the page of paths. */
  static List<Line> links(Here here) {
    return here.unit().drills().stream()
        .map(drill -> here.page(here.say("practice.title", drill.title()), path(drill)))
        .toList();
  }

  private static Page page(Drill drill, Site site) {
    Here here = site.at(path(drill));
    return new PracticePage(
        here.frame(
            here.say("practice.title", drill.title()),
            here.page(here.say("menu.drills"), "drills.html"),
            here.link(drill)),
        drill.id().slug(),
        here.link(drill),
        stages(drill, here));
  }

  private static List<Stage> stages(Drill drill, Here here) {
    List<Stage> stages = new ArrayList<>();
    stages.add(stage("sign", Line.of(DrillPages.sign(drill, here)), "stage-sign", here));
    stages.add(stage("make-safe", Line.of(drill.makeSafe().value()), "stage-safe", here));
    int number = 0;
    for (DrillCheck check : drill.checks()) {
      number++;
      stages.add(
          new Stage(
              here.say("practice.check", number, drill.checks().size()),
              List.of(Line.of(check.action().value())),
              check.see().map(see -> Line.of(see.value())),
              "stage-check"));
    }
    drill
        .never()
        .ifPresent(
            never -> stages.add(stage("never", Line.of(never.value()), "stage-never", here)));
    stages.add(end(drill, here));
    return stages;
  }

  private static Stage stage(String name, Line does, String style, Here here) {
    return new Stage(here.say("practice." + name), List.of(does), Optional.empty(), style);
  }

  private static Stage end(Drill drill, Here here) {
    List<Line> does = new ArrayList<>();
    if (drill.escalate().value()) {
      for (Premises location : here.unit().details().locations()) {
        location
            .contacts()
            .forEach(
                contact ->
                    does.add(Line.of(location.title() + ": ").then(DrillPages.contact(contact))));
      }
    } else {
      does.add(Line.of(here.say("drill.no-escalation")));
    }
    return new Stage(
        here.say(drill.escalate().value() ? "practice.escalate" : "practice.end"),
        does,
        Optional.empty(),
        "stage-end");
  }
}
