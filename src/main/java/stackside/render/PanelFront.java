package stackside.render;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stackside.model.PanelPlace;
import stackside.render.PanelPlan.Misfit;
import stackside.render.PanelPlan.Place;
import stackside.render.PanelPlan.Use;
import stackside.render.Shape.Paint;
import stackside.render.Shape.Stroke;
import stackside.render.Shape.Weight;

/**
 * Lays out and draws the front panel itself: rows and columns of sockets, the label and plug of
 * each, what would happen to another plug that fits, and the cables down to the lower edge.
 */
final class PanelFront {
  private static final double TALLEST_PLUG = 2.7;

  private final List<Place> places;
  private final List<Place> outlined;
  private final Pen pen;
  private final double width;
  private final double pad;
  private final Wording wording;
  private final double scale;

  /** Where the words for a socket are drawn. */
  enum Wording {
    INSIDE,
    ELSEWHERE
  }

  /** A cable that leaves the panel downwards at x, from the plug of a place. */
  record Exit(Place place, double x, Route soFar) {}

  PanelFront(List<Place> places, List<Place> outlined, Pen pen, double width, Wording wording) {
    this.places = places;
    this.outlined = outlined;
    this.pen = pen;
    this.width = width;
    this.pad = 0.7 * pen.text();
    this.wording = wording;
    this.scale = scale();
  }

  /** Whether every word fits into its column, with the name beside the label. */
  static boolean holdsWords(List<Place> places, Pen pen, double width) {
    PanelFront front = new PanelFront(places, List.of(), pen, width, Wording.INSIDE);
    return places.stream().allMatch(front::holdsWords);
  }

  private boolean holdsWords(Place place) {
    double room = room(place);
    return headingWidth(place) <= room
        && place.misfits().stream().allMatch(misfit -> MisfitNote.fits(misfit, pen, room));
  }

  /** Draws the panel with its top left corner at a point; returns its lower edge. */
  double draw(double left, double top, List<Exit> exits) {
    int frame = pen.here();
    double y = top + pad;
    for (int row : rows()) {
      y = row(row, left, y, exits);
    }
    Paint paint = Paint.both(pen.heavy(Ink.INK), Ink.PAPER);
    double line = pen.thick() / 2;
    pen.addAt(
        frame,
        new Shape.Rect(left + line, top, width - 2 * line, y - top, 0.9 * pen.text(), paint));
    exits.sort(Comparator.comparingDouble(Exit::x));
    return y;
  }

  private List<Integer> rows() {
    return places.stream().map(place -> at(place).row()).distinct().sorted().toList();
  }

  private double row(int row, double left, double top, List<Exit> exits) {
    List<Place> inRow =
        places.stream()
            .filter(place -> at(place).row() == row)
            .sorted(Comparator.comparing(PanelFront::at))
            .toList();
    double plug = inRow.stream().mapToDouble(this::plugHeight).max().orElse(0);
    double middle = top + pen.pillHeight() + 0.45 * pen.text() + plug / 2;
    double end = middle + plug / 2 + 0.5 * pen.text();
    for (Place place : inRow) {
      double x = left + middleOf(place);
      heading(place, x, top);
      PlugOutline.of(place).draw(pen, x, middle, scale, place.use());
      double notes = middle + plug / 2 + 0.5 * pen.text();
      if (place.use() == Use.USED) {
        double turn = middle + plug / 2 + 0.35 * pen.text();
        exits.add(exit(place, left, middle + plugHeight(place) / 2, turn));
        notes += place.misfits().isEmpty() ? 0 : 0.35 * pen.text();
      }
      end = Math.max(end, notes(place, x, notes));
      if (outlined.contains(place)) {
        outline(x, top, middle + plug / 2, place);
      }
    }
    return end + 0.35 * pen.text();
  }

  private static PanelPlace at(Place place) {
    return place.socket().place().value();
  }

  /** Draws an outline round the label, name and plug of a socket. */
  private void outline(double middle, double top, double plugEnd, Place place) {
    double heading = wording == Wording.INSIDE ? headingWidth(place) : pen.pillWidth(place.label());
    double plug = PlugOutline.of(place).width(scale, pen);
    double room = cellWidth() - gutterWidth(place) - pen.thick();
    double wide = Math.min(Math.max(heading, plug) + 1.1 * pen.text(), room);
    double above = 0.3 * pen.text();
    pen.add(
        new Shape.Rect(
            middle - wide / 2,
            top - above,
            wide,
            plugEnd - top + above + 0.3 * pen.text(),
            0.5 * pen.text(),
            Paint.outline(Stroke.of(Ink.INK, 1.2 * pen.thick()))));
  }

  // Columns, and the gutters where cables pass the sockets below

  private double cellWidth() {
    int columns = places.stream().mapToInt(place -> at(place).column()).max().orElse(1);
    return (width - 2 * pad) / columns;
  }

  private double cellLeft(Place place) {
    return pad + (at(place).column() - 1) * cellWidth();
  }

  private double lane() {
    return CableRuns.lane(pen);
  }

  private List<Place> passingIn(int column) {
    List<Place> passing = new ArrayList<>();
    for (Place place : places) {
      if (at(place).column() == column && place.use() == Use.USED && goesRound(place)) {
        passing.add(place);
      }
    }
    passing.sort(Comparator.comparing(PanelFront::at));
    return passing;
  }

  /** Whether words or sockets below this one in its column force its cable to take a detour. */
  private boolean goesRound(Place place) {
    boolean words = wording == Wording.INSIDE && !place.misfits().isEmpty();
    return words
        || places.stream()
            .map(PanelFront::at)
            .anyMatch(
                other -> other.column() == at(place).column() && other.row() > at(place).row());
  }

  private double gutterWidth(Place place) {
    int cables = passingIn(at(place).column()).size();
    return cables == 0 ? 0 : cables * lane() + 0.3 * pen.text();
  }

  private double middleOf(Place place) {
    double gutter = gutterWidth(place);
    return cellLeft(place) + gutter + (cellWidth() - gutter) / 2;
  }

  private double room(Place place) {
    return cellWidth() - gutterWidth(place) - 0.5 * pen.text();
  }

  private Exit exit(Place place, double left, double from, double turn) {
    double x = left + middleOf(place);
    if (!goesRound(place)) {
      return new Exit(place, x, Route.from(x, from));
    }
    int lane = passingIn(at(place).column()).indexOf(place);
    double gutter = left + cellLeft(place) + (lane + 0.3) * lane();
    return new Exit(place, gutter, Route.from(x, from).down(turn).across(gutter));
  }

  // One socket

  private void heading(Place place, double x, double top) {
    double pill = pen.pillWidth(place.label());
    if (wording == Wording.ELSEWHERE) {
      label(place, pen, x - pill / 2, top);
      return;
    }
    double left = x - headingWidth(place) / 2;
    label(place, pen, left, top);
    double base = top + pen.pillHeight() / 2 + pen.capital() / 2;
    pen.words(left + pill + 0.4 * pen.text(), base, place.name(), Weight.REGULAR, ink(place.use()));
  }

  private double headingWidth(Place place) {
    return pen.pillWidth(place.label())
        + 0.4 * pen.text()
        + pen.width(place.name(), Weight.REGULAR);
  }

  private static Ink ink(Use use) {
    return use == Use.UNUSED ? Ink.GREY : Ink.INK;
  }

  /** Draws the label as it appears on the machine, framed like a callout. */
  static void label(Place place, Pen pen, double left, double top) {
    if (place.use() == Use.USED) {
      pen.pill(place.label(), left, top, Paint.fill(Ink.INK), Ink.PAPER);
    } else {
      Ink ink = ink(place.use());
      pen.pill(place.label(), left, top, Paint.both(pen.line(ink), Ink.PAPER), ink);
    }
  }

  private double plugHeight(Place place) {
    return PlugOutline.of(place).height(scale, pen);
  }

  /** One scale for all plugs of a panel, so that their sizes can be compared; at most life size. */
  private double scale() {
    double tallest = TALLEST_PLUG * pen.text();
    return places.stream()
        .mapToDouble(place -> PlugOutline.of(place).largest(room(place) * 0.95, tallest, pen))
        .min()
        .orElse(1);
  }

  private double notes(Place place, double x, double top) {
    if (wording == Wording.ELSEWHERE || place.misfits().isEmpty()) {
      return top;
    }
    double end = top;
    double room = room(place);
    double block =
        place.misfits().stream().mapToDouble(m -> MisfitNote.width(m, pen, room)).max().orElse(0);
    for (Misfit misfit : place.misfits()) {
      end = MisfitNote.draw(misfit, pen, x - block / 2, end, room);
    }
    return end;
  }
}
