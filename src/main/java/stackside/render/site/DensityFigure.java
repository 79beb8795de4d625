package stackside.render.site;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stackside.derive.figure.SnareToPad;
import stackside.derive.figure.SnareToPad.Station;
import stackside.derive.figure.SnareToPad.Stop;
import stackside.render.DensityDrawing;
import stackside.render.DensityDrawing.Form;
import stackside.render.Numbers;
import stackside.render.Sheet;
import stackside.render.site.Part.Grid;

/** One current from snare to pad: the areas to one scale, with the density in each. */
final class DensityFigure {
  private DensityFigure() {}

  static List<Part> parts(String id, PageContext here) {
    List<Stop> stops = SnareToPad.stops();
    DensityDrawing.Plan plan =
        new DensityDrawing.Plan(
            here.say("figure.density.title"),
            here.say("figure.density.caption", Numbers.text(SnareToPad.CURRENT)),
            stops.stream().map(stop -> drawn(stop, here)).toList());
    return List.of(
        here.figure(
            id,
            DensityDrawing.of(plan, Sheet.PAGE),
            DensityDrawing.of(plan, Sheet.PHONE),
            Optional.empty()),
        new Grid(
                here.say("figure.density.title"),
                List.of(
                    here.say("figure.density.where"),
                    here.say("figure.density.area"),
                    here.say("figure.density.density"),
                    here.say("figure.density.read"),
                    here.say("figure.density.heating")),
                stops.stream().map(stop -> row(stop, here)).toList())
            .byColumn(),
        new Part.Say(RichLine.of(here.say("figure.density.source"))),
        new Part.Say(RichLine.of(here.say("figure.density.limits"))),
        new Part.Say(RichLine.of(here.say("figure.learning"))));
  }

  private static DensityDrawing.Stop drawn(Stop stop, PageContext here) {
    return new DensityDrawing.Stop(
        name(stop, here),
        List.of(area(stop), density(stop)),
        stop.area(),
        stop.station() == Station.PAD ? Form.SQUARE : Form.ROUND);
  }

  private static Grid.GridRow row(Stop stop, PageContext here) {
    return Grid.GridRow.of(
        RichLine.of(name(stop, here)),
        RichLine.of(area(stop)),
        RichLine.of(density(stop)),
        RichLine.of(here.say(key(stop) + ".read")),
        RichLine.of(heating(stop.heating())));
  }

  private static String name(Stop stop, PageContext here) {
    return here.say(key(stop));
  }

  private static String key(Stop stop) {
    return "figure.density." + stop.station().name().toLowerCase(Locale.ROOT);
  }

  private static String area(Stop stop) {
    return Numbers.digits(stop.area().squareCentimetres(), 3) + Numbers.BOUND + "cm²";
  }

  private static String density(Stop stop) {
    return Numbers.digits(stop.density().amperesPerSquareCentimetre(), 3) + Numbers.BOUND + "A/cm²";
  }

  private static String heating(double heating) {
    return heating < 0.01 ? "1/" + Numbers.digits(1 / heating, 2) : Numbers.digits(heating, 2);
  }
}
