package stackside.derive.figure;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.model.Fact;
import stackside.model.Kind;
import stackside.model.Machine;
import stackside.model.Mode;
import stackside.model.Prose;
import stackside.model.Thing;
import stackside.model.Unit;

/** A figure that a text of the unit asks for, and whether it is drawn there. */
public record PlacedFigure(Prose.Figure figure, Place place) {

  /** Where a figure is placed. */
  public enum Place {
    /** Between the paragraphs of a handbook page; it is drawn there. */
    HANDBOOK,
    /** In a list, or in a text that is not a handbook page. */
    ELSEWHERE
  }

  /** All figures of a unit, in the order of its texts. */
  public static List<PlacedFigure> of(Unit unit) {
    Stream<PlacedFigure> handbook =
        unit.handbook().stream()
            .flatMap(page -> page.texts().stream())
            .flatMap(text -> in(text.blocks(), Place.HANDBOOK));
    Stream<PlacedFigure> profiles =
        unit.profiles().stream()
            .flatMap(profile -> Stream.of(profile.technique(), profile.caution()))
            .flatMap(Optional::stream)
            .flatMap(text -> in(text.blocks(), Place.ELSEWHERE));
    return Stream.concat(handbook, profiles).toList();
  }

  private static Stream<PlacedFigure> in(List<Prose.Block> blocks, Place place) {
    return blocks.stream().flatMap(block -> in(block, place));
  }

  private static Stream<PlacedFigure> in(Prose.Block block, Place place) {
    if (block instanceof Prose.Figure figure) {
      return Stream.of(new PlacedFigure(figure, place));
    }
    if (block instanceof Prose.Items items) {
      return items.items().stream().flatMap(item -> in(item, Place.ELSEWHERE));
    }
    if (block instanceof Prose.Heading
        || block instanceof Prose.Paragraph
        || block instanceof Prose.Table) {
      return Stream.empty();
    }
    throw new IllegalStateException("nobody knows what figures stand in " + block);
  }

  /** The figure's name, if such a figure exists. */
  public Optional<FigureName> name() {
    return FigureName.named(figure.name());
  }

  /** The machines that the figure is about. */
  public static List<Machine> machines(Prose.Figure figure, Unit unit) {
    return about(figure, unit, Kind.MACHINE, Machine.class);
  }

  /** The modes that the figure is about. */
  public static List<Mode> modes(Prose.Figure figure, Unit unit) {
    return about(figure, unit, Kind.MODE, Mode.class);
  }

  private static <T extends Thing> List<T> about(
      Prose.Figure figure, Unit unit, Kind kind, Class<T> type) {
    return figure.about().stream()
        .map(Fact::value)
        .filter(id -> id.kind() == kind)
        .distinct()
        .flatMap(id -> unit.find(id).stream())
        .filter(type::isInstance)
        .map(type::cast)
        .toList();
  }
}
