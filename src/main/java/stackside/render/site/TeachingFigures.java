package stackside.render.site;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stackside.derive.figure.EqualDose;
import stackside.derive.figure.TextbookWave;
import stackside.render.BodyDrawing;
import stackside.render.Drawing;
import stackside.render.FarWallDrawing;
import stackside.render.Numbers;
import stackside.render.Sheet;
import stackside.render.TemperatureDrawing;
import stackside.render.WallDrawing;
import stackside.render.WaveDrawing;
import stackside.render.site.Part.Grid;

/** Drawings that are the same for every unit. What they say stands in the file of words. */
final class TeachingFigures {
  private static final List<Integer> FIRST_SCALE = List.of(40, 50, 70, 90, 100, 250);
  private static final List<Integer> SECOND_SCALE = List.of(45, 90, 150, 300);

  private TeachingFigures() {}

  private static List<Part> parts(
      String id, Grid table, PageContext here, Function<Sheet, Drawing> drawing, Part... below) {
    Part.Figure figure =
        here.figure(id, drawing.apply(Sheet.PAGE), drawing.apply(Sheet.PHONE), Optional.of(table));
    return Stream.concat(Stream.of(figure), Arrays.stream(below)).toList();
  }

  private static Grid table(String key, PageContext here, Stream<Grid.GridRow> rows) {
    return new Grid(
        here.say(key + ".title"),
        List.of(here.say("figure.teaching.what"), here.say("figure.teaching.says")),
        rows.toList());
  }

  private static Grid.GridRow row(String name, String says) {
    return Grid.GridRow.of(RichLine.of(name), RichLine.of(says));
  }

  private static Part say(PageContext here, String key) {
    return new Part.Say(RichLine.of(here.say(key)));
  }

  static List<Part> waves(String id, PageContext here) {
    WaveDrawing.Plan plan =
        new WaveDrawing.Plan(
            here.say("figure.effect.title"),
            here.say("figure.waves.caption"),
            TextbookWave.all().stream().map(wave -> strip(wave, here)).toList());
    Grid table =
        table(
            "figure.effect",
            here,
            plan.strips().stream().map(strip -> row(strip.name(), strip.says())));
    return parts(
        id, table, here, sheet -> WaveDrawing.of(plan, sheet), say(here, "figure.effect.source"));
  }

  private static WaveDrawing.Strip strip(TextbookWave wave, PageContext here) {
    return new WaveDrawing.Strip(
        here.say(
            "figure.effect.name",
            Numbers.digits(100 * wave.duty().share(), 2),
            Numbers.digits(wave.crest().factor(), 2)),
        here.say("figure.effect." + wave.word()),
        wave.crest(),
        Optional.empty());
  }

  static List<Part> temperature(String id, PageContext here) {
    TemperatureDrawing.Plan plan =
        new TemperatureDrawing.Plan(
            here.say("figure.temperature.title"),
            here.say("figure.temperature.caption"),
            side("first", FIRST_SCALE, here),
            side("second", SECOND_SCALE, here));
    Grid table =
        table(
            "figure.temperature",
            here,
            Stream.of(plan.left(), plan.right())
                .flatMap(
                    side -> side.stages().stream().map(stage -> row(side.source(), stage.says()))));
    return parts(
        id,
        table,
        here,
        sheet -> TemperatureDrawing.of(plan, sheet),
        say(here, "figure.temperature.source"),
        new Grid(
            here.say("figure.dose.title"),
            List.of(here.say("figure.dose.at"), here.say("figure.dose.time")),
            EqualDose.all().stream()
                .map(
                    dose ->
                        Grid.GridRow.of(
                            RichLine.of(String.valueOf(dose.celsius()) + Numbers.BOUND + "°C"),
                            RichLine.of(time(dose, here))))
                .toList()),
        say(here, "figure.dose.source"));
  }

  private static String time(EqualDose dose, PageContext here) {
    double seconds = dose.time().value();
    return seconds >= 60
        ? here.say("figure.dose.minutes", Numbers.digits(seconds / 60, 2))
        : here.say("figure.dose.seconds", Numbers.digits(seconds, 2));
  }

  private static TemperatureDrawing.Side side(String name, List<Integer> scale, PageContext here) {
    String key = "figure.temperature." + name;
    return new TemperatureDrawing.Side(
        here.say(key),
        scale.stream()
            .map(celsius -> new TemperatureDrawing.Stage(celsius, here.say(key + "." + celsius)))
            .toList());
  }

  static List<Part> lift(String id, PageContext here) {
    WallDrawing.Plan plan =
        new WallDrawing.Plan(
            here.say("figure.lift.title"),
            here.say("figure.lift.caption"),
            List.of(
                new WallDrawing.Panel(
                    here.say("figure.lift.bare"), here.say("figure.lift.bare.says"), false),
                new WallDrawing.Panel(
                    here.say("figure.lift.cushion"), here.say("figure.lift.cushion.says"), true)),
            new WallDrawing.Labels(
                here.say("figure.lift.wire"),
                here.say("figure.lift.loose"),
                here.say("figure.lift.fluid"),
                here.say("figure.lift.muscle"),
                here.say("figure.lift.heat")));
    Grid table =
        table(
            "figure.lift",
            here,
            plan.panels().stream().map(panel -> row(panel.name(), panel.says())));
    return parts(
        id, table, here, sheet -> WallDrawing.of(plan, sheet), say(here, "figure.lift.source"));
  }

  static List<Part> plate(String id, PageContext here) {
    BodyDrawing.Plan plan =
        new BodyDrawing.Plan(
            here.say("figure.plate.title"),
            here.say("figure.plate.caption"),
            Arrays.stream(BodyDrawing.Place.values())
                .map(place -> here.say("figure.plate." + place.name().toLowerCase(Locale.ROOT)))
                .toList());
    Grid table =
        table(
            "figure.plate",
            here,
            IntStream.range(0, plan.places().size())
                .mapToObj(i -> row(String.valueOf(i + 1), plan.places().get(i))));
    return parts(
        id, table, here, sheet -> BodyDrawing.of(plan, sheet), say(here, "figure.plate.source"));
  }

  static List<Part> farWall(String id, PageContext here) {
    FarWallDrawing.Plan plan =
        new FarWallDrawing.Plan(
            here.say("figure.far-wall.title"),
            here.say("figure.far-wall.caption"),
            here.say("figure.far-wall.wall"),
            here.say("figure.far-wall.far"),
            List.of(
                new FarWallDrawing.Panel(
                    here.say("figure.far-wall.free"), here.say("figure.far-wall.free.says"), false),
                new FarWallDrawing.Panel(
                    here.say("figure.far-wall.touching"),
                    here.say("figure.far-wall.touching.says"),
                    true)));
    Grid table =
        table(
            "figure.far-wall",
            here,
            plan.panels().stream().map(panel -> row(panel.name(), panel.says())));
    return parts(
        id,
        table,
        here,
        sheet -> FarWallDrawing.of(plan, sheet),
        say(here, "figure.far-wall.source"));
  }
}
