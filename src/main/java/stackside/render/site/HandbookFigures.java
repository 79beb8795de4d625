package stackside.render.site;

import java.util.List;
import stackside.derive.figure.FigureName;
import stackside.derive.figure.PlacedFigure;
import stackside.model.Prose;

/**
 * Chooses the drawing by the name that a handbook page gives. A figure that cannot be drawn is
 * reported on the page as well as among the problems.
 */
final class HandbookFigures {

  private HandbookFigures() {}

  /**
   * A figure with its words and its table.
   *
   * @param id id of the figure on its page
   */
  static List<Part> parts(Prose.Figure figure, String id, PageContext here) {
    List<Part> parts =
        FigureName.named(figure.name())
            .map(name -> parts(name, figure, id, here))
            .orElse(List.of());
    return parts.isEmpty()
        ? List.of(
            new Part.Say(RichLine.of(TextPiece.shown(here.say("figure.not-drawn", figure.name())))))
        : parts;
  }

  private static List<Part> parts(
      FigureName name, Prose.Figure figure, String id, PageContext here) {
    return switch (name) {
      case CURRENT_DENSITY -> DensityFigure.parts(id, here);
      case POWER_AGAINST_LOAD ->
          PowerFigure.parts(PlacedFigure.modes(figure, here.unit()), id, here);
      case WAVEFORMS -> WaveFigure.parts(PlacedFigure.modes(figure, here.unit()), id, here);
      case STALK_HEATING -> StalkFigure.parts(id, here);
      case FRONT_PANELS -> PanelsFigure.parts(PlacedFigure.machines(figure, here.unit()), id, here);
      case WAVES_AND_EFFECT -> TeachingFigures.waves(id, here);
      case TISSUE_TEMPERATURE -> TeachingFigures.temperature(id, here);
      case LIFT -> TeachingFigures.lift(id, here);
      case PLATE_PLACEMENT -> TeachingFigures.plate(id, here);
      case STALK_AND_FAR_WALL -> TeachingFigures.farWall(id, here);
      case SOCKETS_HERE,
          PLATES_HERE,
          MODES_HERE,
          RATINGS_HERE,
          ARGON_HERE,
          BIPOLAR_HERE,
          WALLS_HERE,
          LESIONS_HERE,
          CHECKLISTS_HERE,
          DRILLS_HERE,
          OUTPUT_CHECKS_HERE,
          FOOT_SWITCHES_HERE ->
          List.of(HereTable.of(name, here));
    };
  }
}
