package stackside.render.site;

import java.util.List;
import java.util.Optional;
import stackside.derive.figure.StalkHeating;
import stackside.render.Numbers;
import stackside.render.Sheet;
import stackside.render.StalkDrawing;
import stackside.render.StalkDrawing.Bar;
import stackside.render.site.Part.Grid;

/**
 * How much more a thinner stalk is heated by the same current: relative values, for learning only.
 */
final class StalkFigure {
  private StalkFigure() {}

  static List<Part> parts(String id, PageContext here) {
    List<StalkHeating> stalks = StalkHeating.stalks();
    String widest = Numbers.text(stalks.get(0).diameter());
    StalkDrawing.Plan plan =
        new StalkDrawing.Plan(
            here.say("figure.stalk.title"),
            here.say("figure.stalk.caption", widest),
            here.say("figure.stalk.current"),
            here.say("figure.stalk.power"),
            stalks.stream().map(StalkFigure::bar).toList());
    return List.of(
        here.figure(
            id,
            StalkDrawing.of(plan, Sheet.PAGE),
            StalkDrawing.of(plan, Sheet.PHONE),
            Optional.empty()),
        new Grid(
            here.say("figure.stalk.title"),
            List.of(
                here.say("figure.stalk.diameter"),
                here.say("figure.stalk.current"),
                here.say("figure.stalk.power")),
            stalks.stream().map(StalkFigure::row).toList()),
        new Part.Say(RichLine.of(source(stalks, here))),
        new Part.Say(RichLine.of(here.say("figure.learning"))));
  }

  private static String source(List<StalkHeating> stalks, PageContext here) {
    double half = stalks.get(0).diameter().value() / 2;
    return stalks.stream()
        .filter(stalk -> stalk.diameter().value() == half)
        .map(
            stalk ->
                here.say(
                    "figure.stalk.source",
                    Numbers.digits(stalk.atSameCurrent(), 2),
                    Numbers.digits(stalk.atSamePower(), 2)))
        .findFirst()
        .orElseThrow();
  }

  private static Bar bar(StalkHeating stalk) {
    return new Bar(
        stalk.diameter(),
        stalk.atSameCurrent(),
        stalk.atSamePower(),
        Numbers.digits(stalk.atSameCurrent(), 2),
        Numbers.digits(stalk.atSamePower(), 2));
  }

  private static Grid.GridRow row(StalkHeating stalk) {
    return Grid.GridRow.of(
        RichLine.of(Numbers.text(stalk.diameter())),
        RichLine.of(times(stalk.atSameCurrent())),
        RichLine.of(times(stalk.atSamePower())));
  }

  private static String times(double heating) {
    return Numbers.digits(heating, 2) + Numbers.BOUND + "×";
  }
}
