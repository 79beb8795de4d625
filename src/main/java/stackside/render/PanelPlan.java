package stackside.render;

import java.util.List;
import java.util.Optional;
import stackside.model.Machine;
import stackside.model.Plug;
import stackside.model.Socket;

/**
 * What is to be said about each socket of a front panel: what goes in, and what would happen to
 * something that also fits. The drawing and the table beside it are both made from this.
 *
 * @param places in the true order of the panel, row by row
 * @param words in which the drawing says what it says itself
 * @param outlined the places to draw an outline round
 */
public record PanelPlan(Machine machine, List<Place> places, Words words, List<Place> outlined) {

  public PanelPlan {
    places = List.copyOf(places);
    outlined = List.copyOf(outlined);
  }

  public PanelPlan(Machine machine, List<Place> places, Words words) {
    this(machine, places, words, List.of());
  }

  /** The same panel with an outline round some of its sockets. */
  public PanelPlan outlining(List<Place> some) {
    return new PanelPlan(machine, places, words, some);
  }

  /**
   * One socket.
   *
   * @param plug the shape drawn in it: the right one, or the first that it takes
   * @param leads what goes in, with its cables
   * @param misfits what else fits and must not go in
   */
  public record Place(Socket socket, Optional<Plug> plug, List<Lead> leads, List<Misfit> misfits) {
    public Place {
      leads = List.copyOf(leads);
      misfits = List.copyOf(misfits);
    }

    public String label() {
      return socket.label().value();
    }

    public String name() {
      return socket.name().value();
    }

    public Use use() {
      if (!leads.isEmpty()) {
        return Use.USED;
      }
      return misfits.isEmpty() ? Use.UNUSED : Use.ALSO_FITS;
    }
  }

  /** What becomes of a socket in a plan. */
  public enum Use {
    USED,
    ALSO_FITS,
    UNUSED
  }

  /**
   * Something that goes into a socket, and the cables between.
   *
   * @param hand what the hand plugs in: the last cable, or the thing itself
   */
  public record Lead(String name, String hand, Optional<String> through) {}

  /**
   * Something that fits and does not belong: what it is, what would happen, and how bad that is.
   */
  public record Misfit(String what, String outcome, Mark mark) {}
}
