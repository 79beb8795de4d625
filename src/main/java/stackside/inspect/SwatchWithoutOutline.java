package stackside.inspect;

import java.util.List;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/** Finds coloured areas that vanish on white paper. */
final class SwatchWithoutOutline implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "swatch-without-outline",
          Severity.ERROR,
          "a coloured area neither stands out nor has a dark outline");

  @Override
  public Fault fault() {
    return FAULT;
  }

  private static final double CONTRAST = 3;
  private static final double LINE = 0.5;

  @Override
  public List<Problem> problems(InspectedCard card) {
    return card.seen().areas().stream()
        .filter(area -> area.fill().filter(Colour::coloured).isPresent())
        .filter(area -> !standsOut(area.fill().orElseThrow()) && !outlined(area))
        .map(
            area ->
                FAULT.at(
                    card.at(),
                    card.name()
                        + " has an area in "
                        + area.fill().orElseThrow()
                        + " without a dark outline of 0.5 mm"))
        .toList();
  }

  private static boolean standsOut(Colour fill) {
    return fill.contrast(Colour.WHITE) >= CONTRAST;
  }

  private static boolean outlined(PaintedArea area) {
    return area.line() >= LINE - 0.01
        && area.outline().filter(line -> line.contrast(Colour.WHITE) >= 7).isPresent();
  }
}
