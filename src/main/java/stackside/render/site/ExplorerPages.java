package stackside.render.site;

import java.util.List;
import java.util.stream.Stream;
import stackside.derive.figure.Explored;
import stackside.derive.figure.SnareToPad;
import stackside.quantity.Amperes;
import stackside.render.Numbers;
import stackside.render.site.ExplorerPage.Control;
import stackside.render.site.ExplorerPage.Result;

/** The page for exploring current density and heating. */
final class ExplorerPages implements Pages {
  static final String PATH = "explorer.html";

  private static final List<Double> LOOPS = List.of(20.0, 15.0, 10.0, 8.0, 5.0);
  private static final double MINUTE = 60;

  @Override
  public Stream<Page> of(Website site) {
    PageContext here = site.at(PATH);
    return Stream.of(
        new ExplorerPage(
            here.frame(here.say("explorer.title"), here.page(here.say("menu.paths"), "paths.html")),
            controls(here),
            List.of(
                result("loop", Numbers.BOUND + "A/cm²", here),
                result("pad", Numbers.BOUND + "A/cm²", here),
                result("heating", Numbers.BOUND + "×", here),
                result("factor", Numbers.BOUND + "A²s", here)),
            List.of(
                here.section("worked", table(here), says("explorer.source", here)),
                here.section(
                    "limits",
                    says("figure.density.limits", here),
                    says("explorer.factor-limits", here)))));
  }

  private static Part says(String key, PageContext here) {
    return new Part.Say(RichLine.of(here.say(key)));
  }

  private static Result result(String name, String unit, PageContext here) {
    return new Result(name, here.say("explorer." + name), unit);
  }

  /** The ranges extend far beyond any real use at both ends, so that neither end is advice. */
  private static List<Control> controls(PageContext here) {
    return List.of(
        new Control(
            "current",
            here.say("explorer.current"),
            "0.05",
            "2",
            "0.05",
            plain(SnareToPad.CURRENT.value()),
            "A"),
        new Control(
            "loop",
            here.say("explorer.loop-width"),
            "1",
            "30",
            "1",
            plain(SnareToPad.LOOP_CENTIMETRES * 10),
            "mm"),
        new Control(
            "pad",
            here.say("explorer.pad-width"),
            "1",
            "20",
            "1",
            plain(SnareToPad.PAD_CENTIMETRES),
            "cm"),
        new Control("time", here.say("explorer.time"), "1", "60", "1", "1", "s"));
  }

  /** A number in the form that an input element expects. */
  private static String plain(double number) {
    return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
  }

  private static Part table(PageContext here) {
    return new Part.Grid(
            here.say("section.worked"),
            List.of(
                here.say("explorer.loop-width"),
                here.say("explorer.loop"),
                here.say("explorer.pad"),
                here.say("explorer.heating")),
            LOOPS.stream().map(loop -> row(loop)).toList())
        .byColumn();
  }

  private static Part.Grid.GridRow row(double loop) {
    Explored explored =
        Explored.of(
            new Amperes(SnareToPad.CURRENT.value()), loop, SnareToPad.PAD_CENTIMETRES, MINUTE);
    return Part.Grid.GridRow.of(
        RichLine.of(Numbers.digits(loop, 2) + Numbers.BOUND + "mm"),
        RichLine.of(Numbers.digits(explored.loop(), 3) + Numbers.BOUND + "A/cm²"),
        RichLine.of(Numbers.digits(explored.pad(), 3) + Numbers.BOUND + "A/cm²"),
        RichLine.of(Numbers.digits(explored.heating(), 3) + Numbers.BOUND + "×"));
  }
}
