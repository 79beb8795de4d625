package stackside.render;

import java.util.ArrayList;
import java.util.List;
import stackside.render.PanelFront.Exit;
import stackside.render.PanelPlan.Lead;
import stackside.render.PanelPlan.Place;
import stackside.render.Shape.Stroke;
import stackside.render.Shape.Weight;

/**
 * Leads the cables from the lower edge of a panel to the names of the things plugged in. No two
 * cables cross: they run side by side in the order in which they leave the panel, and the names are
 * listed in the opposite order.
 */
final class CableRuns {
  private final List<Exit> exits;
  private final Pen pen;

  /**
   * @param exits from left to right
   */
  CableRuns(List<Exit> exits, Pen pen) {
    this.exits = List.copyOf(exits);
    this.pen = pen;
  }

  private double lane() {
    return lane(pen);
  }

  /** The spacing between neighbouring cables. */
  static double lane(Pen pen) {
    return 0.95 * pen.text();
  }

  private double gap() {
    return 0.6 * pen.text();
  }

  /** Draws names below the panel and cables down its left side; returns where the names end. */
  double below(double panelEnd, double width) {
    double left = firstLane();
    double names = left + exits.size() * lane();
    double top = panelEnd + 0.8 * pen.text() + exits.size() * lane();
    List<Double> ends = new ArrayList<>();
    for (int i = exits.size() - 1; i >= 0; i--) {
      ends.add(0, top + pen.pillHeight() / 2);
      top = name(exits.get(i).place(), names, top, width) + gap();
    }
    for (int i = 0; i < exits.size(); i++) {
      double run = panelEnd + 0.75 * pen.text() + i * lane();
      lay(i, run, left + i * lane(), ends.get(i), names);
    }
    return top - gap();
  }

  /** Straight down if the first cable leaves near the left edge; otherwise close to the edge. */
  private double firstLane() {
    double x = exits.get(0).x();
    return x < 3 * lane() ? x : 0.5 * lane();
  }

  /** Draws names to the right of the panel; returns the lower end of panel and names. */
  double beside(double panelTop, double panelEnd, double panelWidth, double width) {
    int count = exits.size();
    double firstLane = panelWidth + 0.9 * pen.text();
    double names = firstLane + count * lane();
    double height = 0;
    for (Exit exit : exits) {
      height += nameHeight(exit.place(), width - names) + gap();
    }
    height -= gap();
    double top = panelTop + Math.max(0, (panelEnd - panelTop - height) / 2);
    List<Double> ends = new ArrayList<>();
    for (int i = count - 1; i >= 0; i--) {
      ends.add(0, top + pen.pillHeight() / 2);
      top = name(exits.get(i).place(), names, top, width) + gap();
    }
    double lowestThatTurnsUp = count > 1 ? ends.get(1) : panelEnd;
    double runs = Math.max(panelEnd + 0.75 * pen.text(), lowestThatTurnsUp);
    for (int i = 0; i < count; i++) {
      double run = runs + (count - 1 - i) * lane();
      lay(i, run, firstLane + (count - 1 - i) * lane(), ends.get(i), names);
    }
    return Math.max(top - gap(), runs + (count - 1) * lane() + pen.cable());
  }

  private void lay(int number, double run, double lane, double end, double names) {
    pen.add(
        exits
            .get(number)
            .soFar()
            .down(run)
            .across(lane)
            .down(end)
            .across(names)
            .drawn(0.7 * pen.text(), Stroke.of(Ink.INK, pen.cable())));
  }

  /** Draws a label with what goes in; returns where it ends. */
  private double name(Place place, double left, double top, double right) {
    PanelFront.label(place, pen, left, top);
    double x = left + pen.pillWidth(place.label()) + 0.5 * pen.text();
    double y = top + (pen.pillHeight() - pen.capital()) / 2;
    for (Lead lead : place.leads()) {
      y = pen.block(x, y, right - x, lead.name(), Weight.BOLD, Ink.INK);
      if (lead.through().isPresent()) {
        y = pen.block(x, y, right - x, lead.through().get(), Weight.REGULAR, Ink.INK);
      }
    }
    return Math.max(top + pen.pillHeight(), y - pen.pitch() + pen.text());
  }

  private double nameHeight(Place place, double width) {
    Pen trial = new Pen(pen.text());
    return new CableRuns(exits, trial).name(place, 0, 0, width);
  }
}
