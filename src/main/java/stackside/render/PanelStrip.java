package stackside.render;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stackside.model.PanelPlace;
import stackside.model.SocketKind;
import stackside.render.PanelPlan.Lead;
import stackside.render.PanelPlan.Misfit;
import stackside.render.PanelPlan.Place;
import stackside.render.PanelPlan.Use;
import stackside.render.Shape.Paint;
import stackside.render.Shape.Weight;

/**
 * Draws a front panel for a card: the sockets in their real order, each with its label, the outline
 * of its plug, and what the user plugs in, or a note that it stays empty. Below them, across the
 * full width, it says what would happen if something went into a wrong socket. The rows of the card
 * say which instrument goes where; the strip says so only if one kind of cable goes into several
 * sockets.
 */
public final class PanelStrip {

  private static final double TALLEST_PLUG = 1.55;
  private static final double STEP = 1;
  private static final int MOST_STEPS = 24;
  private static final double TIE = 0.05;
  private static final double WIDEST_PLUG = 2.1;

  private final PanelPlan plan;
  private final List<Cell> cells;
  private final Words words;
  private final Pen pen;
  private final double width;
  private final List<Double> columns;
  private final double scale;

  /**
   * A measured socket.
   *
   * @param label the width of its framed label
   * @param widest the width of its widest word
   */
  private record Cell(
      Place place, PlugOutline plug, double label, List<String> words, double widest) {
    PanelPlace at() {
      return place.socket().place().value();
    }
  }

  private PanelStrip(PanelPlan plan, Sheet sheet) {
    this.plan = plan;
    this.words = plan.words();
    this.pen = new Pen(sheet.text());
    this.width = sheet.width();
    this.cells = plan.places().stream().map(this::cell).toList();
    this.scale = scale();
    this.columns = columns();
  }

  private Cell cell(Place place) {
    List<String> lines = words(place);
    return new Cell(
        place,
        PlugOutline.of(place),
        pen.pillWidth(place.label()),
        lines,
        lines.stream()
            .mapToDouble(line -> Lettering.of(Weight.BOLD).widestWord(line, pen.text()))
            .max()
            .orElse(0));
  }

  /** Draws the strip. Its description for people who cannot see it is that of {@link SocketMap}. */
  public static Drawing of(PanelPlan plan, Sheet sheet) {
    PanelStrip strip = new PanelStrip(plan, sheet);
    double height = strip.draw();
    Drawing full = SocketMap.of(plan, sheet);
    return new Drawing(full.title(), full.description(), sheet.width(), height, strip.pen.shapes());
  }

  private double pad() {
    return 0.3 * pen.text();
  }

  private double gap() {
    return 0.28 * pen.text();
  }

  /** One scale for all plugs; at most life size. */
  private double scale() {
    double widest = WIDEST_PLUG * pen.text();
    double tallest = TALLEST_PLUG * pen.text();
    return cells.stream()
        .mapToDouble(cell -> cell.plug().largest(widest, tallest, pen))
        .min()
        .orElse(1);
  }

  /**
   * Finds the columns that make the strip lowest: starts with equal ones and shifts width between
   * them.
   */
  private List<Double> columns() {
    int count = cells.stream().mapToInt(cell -> cell.at().column()).max().orElse(1);
    List<Double> best = Collections.nCopies(count, (width - 2 * pad()) / count);
    double lowest = height(best);
    boolean better = true;
    while (better) {
      better = false;
      for (List<Double> shifted : shifted(best)) {
        double height = height(shifted);
        if (height < lowest - 0.01) {
          best = shifted;
          lowest = height;
          better = true;
        }
      }
    }
    return best;
  }

  /** The same columns, with one widened by some steps and another narrowed. */
  private static List<List<Double>> shifted(List<Double> columns) {
    List<List<Double>> all = new ArrayList<>();
    for (int steps = 1; steps <= MOST_STEPS; steps++) {
      for (int wider = 0; wider < columns.size(); wider++) {
        for (int narrower = 0; narrower < columns.size(); narrower++) {
          if (wider != narrower) {
            List<Double> shifted = new ArrayList<>(columns);
            shifted.set(wider, shifted.get(wider) + steps * STEP);
            shifted.set(narrower, shifted.get(narrower) - steps * STEP);
            all.add(shifted);
          }
        }
      }
    }
    return all;
  }

  /**
   * The total height of the rows plus a penalty for broken lines; a huge value if a word or a plug
   * does not fit.
   */
  private double height(List<Double> columns) {
    double height = 0;
    for (int row : rows()) {
      double highest = 0;
      for (Cell cell : cells) {
        if (cell.at().row() == row) {
          Lie lie = lie(cell, columns.get(cell.at().column() - 1));
          highest = Math.max(highest, lie.high());
          height += torn(cell, lie);
        }
      }
      height += highest;
    }
    return height;
  }

  /**
   * How the words of a socket are placed: beside its plug, or below it if that takes less height.
   *
   * @param room how wide a line may be
   * @param high height of the whole socket; a huge value if a word or the plug does not fit
   */
  private record Lie(boolean beside, double room, double high) {}

  private Lie lie(Cell cell, double column) {
    double besideRoom = column - before(cell) - gap();
    double belowRoom = column - 2 * gap();
    double beside = beside(cell, besideRoom);
    double below = tall(cell) + gap() + lines(cell, belowRoom);
    boolean fits = before(cell) <= column && cell.widest() <= Math.max(besideRoom, belowRoom);
    double high =
        fits ? Math.max(tall(cell), Math.min(beside, below)) : Double.MAX_VALUE / cells.size() / 10;
    return beside <= below ? new Lie(true, besideRoom, high) : new Lie(false, belowRoom, high);
  }

  /**
   * The penalty for a broken line. The words for an empty socket read best on one line, so breaking
   * them costs as much as an extra line. For other words it only decides a tie.
   */
  private double torn(Cell cell, Lie lie) {
    boolean empty = cell.place().use() == Use.ALSO_FITS;
    Weight weight = empty ? Weight.BOLD : Weight.REGULAR;
    boolean broken = cell.words().stream().anyMatch(line -> pen.width(line, weight) > lie.room());
    return broken ? pen.pitch() * (empty ? 1 : TIE) : 0;
  }

  private double tall(Cell cell) {
    return Math.max(pen.pillHeight(), cell.plug().height(scale, pen));
  }

  /** Where words beside the plug end; a huge value if they do not fit. */
  private double beside(Cell cell, double room) {
    return cell.widest() > room
        ? Double.MAX_VALUE
        : (pen.pillHeight() - pen.capital()) / 2 + lines(cell, room);
  }

  private double lines(Cell cell, double room) {
    return words(new Pen(pen.text()), cell, 0, 0, room) - pen.pitch() + pen.text();
  }

  private List<Integer> rows() {
    return cells.stream().map(cell -> cell.at().row()).distinct().sorted().toList();
  }

  private double left(Cell cell) {
    int column = cell.at().column() - 1;
    return pad() + columns.subList(0, column).stream().mapToDouble(each -> each).sum();
  }

  /** Label and plug with the space around them. */
  private double before(Cell cell) {
    return cell.label() + 3 * gap() + cell.plug().width(scale, pen);
  }

  private double draw() {
    double line = pen.thick();
    int frame = pen.here();
    double y = line + pad();
    for (int row : rows()) {
      y = row(row, y) + pad();
    }
    List<String> mistakes = mistakes();
    y += mistakes.isEmpty() ? 0 : pad();
    for (String mistake : mistakes) {
      double room = width - 2 * pad() - 2 * gap();
      y = pen.block(pad() + gap(), y, room, mistake, Weight.REGULAR, Ink.INK);
    }
    Paint paint = Paint.both(pen.heavy(Ink.INK), Ink.PAPER);
    pen.addAt(
        frame, new Shape.Rect(line / 2, line / 2, width - line, y - line / 2, pen.text(), paint));
    return y + line;
  }

  private double row(int row, double top) {
    double end = top;
    for (Cell cell : cells) {
      if (cell.at().row() == row) {
        end = Math.max(end, socket(cell, left(cell), top));
      }
    }
    return end;
  }

  /**
   * Draws one socket; returns where it ends. The words go beside the plug or below it, whichever is
   * lower.
   */
  private double socket(Cell cell, double left, double top) {
    Place place = cell.place();
    double tall = tall(cell);
    double wide = cell.plug().width(scale, pen);
    double x = left + gap();
    PanelFront.label(place, pen, x, top + (tall - pen.pillHeight()) / 2);
    cell.plug().draw(pen, x + cell.label() + gap() + wide / 2, top + tall / 2, scale, place.use());
    double after = left + before(cell);
    Lie lie = lie(cell, columns.get(cell.at().column() - 1));
    double end =
        lie.beside()
            ? words(pen, cell, after, top + (pen.pillHeight() - pen.capital()) / 2, lie.room())
            : words(pen, cell, x, top + tall + gap(), lie.room());
    return Math.max(top + tall, end - pen.pitch() + pen.text());
  }

  private double words(Pen pen, Cell cell, double x, double top, double room) {
    Use use = cell.place().use();
    Ink ink = use == Use.UNUSED ? Ink.GREY : Ink.INK;
    double y = top;
    Weight weight = use == Use.ALSO_FITS ? Weight.BOLD : Weight.REGULAR;
    for (String line : cell.words()) {
      y = pen.block(x, y, room, line, weight, ink);
      weight = Weight.REGULAR;
    }
    return y;
  }

  private List<String> words(Place place) {
    return switch (place.use()) {
      case USED -> List.copyOf(plugged(place));
      case ALSO_FITS -> List.of(words.say("panel.keep-empty"));
      case UNUSED -> List.of(words.say("panel.unused"));
    };
  }

  /**
   * What the user plugs in: cables and instruments by name, the neutral electrode by its kind. A
   * cable that also fits another socket is identified by what is connected to it.
   */
  private Set<String> plugged(Place place) {
    Set<String> names = new LinkedHashSet<>();
    if (place.socket().kind().value() == SocketKind.NEUTRAL) {
      names.add(place.name());
      return names;
    }
    Map<String, Set<String>> onHand = new LinkedHashMap<>();
    for (Lead lead : place.leads()) {
      onHand.computeIfAbsent(lead.hand(), any -> new LinkedHashSet<>()).add(lead.name());
    }
    onHand.forEach(
        (hand, ends) -> {
          boolean told = elsewhereToo(hand, place) && !ends.contains(hand);
          names.add(told ? words.say("panel.hand-with", hand) : hand);
          if (told) {
            names.addAll(ends);
          }
        });
    return names;
  }

  private boolean elsewhereToo(String hand, Place place) {
    return plan.places().stream()
        .filter(other -> !other.socket().id().equals(place.socket().id()))
        .flatMap(other -> other.leads().stream())
        .anyMatch(lead -> lead.hand().equals(hand));
  }

  /**
   * What happens if something is in a wrong socket; sockets with the same outcome are listed
   * together.
   */
  private List<String> mistakes() {
    Map<List<String>, List<String>> labels = new LinkedHashMap<>();
    for (Place place : plan.places()) {
      String key = place.use() == Use.USED ? "panel.if-other" : "panel.if-used";
      List<String> outcomes = place.misfits().stream().map(Misfit::outcome).distinct().toList();
      if (!outcomes.isEmpty()) {
        String comes =
            outcomes.stream().reduce((one, or) -> words.say("panel.or-else", one, or)).get();
        labels.computeIfAbsent(List.of(key, comes), any -> new ArrayList<>()).add(place.label());
      }
    }
    List<String> mistakes = new ArrayList<>();
    labels.forEach(
        (said, sockets) ->
            mistakes.add(words.say(said.get(0), words.either(sockets), said.get(1))));
    return mistakes;
  }
}
