package stackside.render;

import java.util.List;
import java.util.Optional;
import stackside.model.Machine;
import stackside.model.Plug;
import stackside.model.Socket;

/**
 * What a front panel says about each socket: what goes in, and what would happen to anything else
 * that fits. Both the drawing and the table beside it are made from this.
 *
 * @param places in the real order of the panel, row by row
 * @param words the drawing's own words
 * @param outlined the places to outline
 */
public record PanelPlan(Machine machine, List<Place> places, Words words, List<Place> outlined) {

  public PanelPlan {
    places = List.copyOf(places);
    outlined = List.copyOf(outlined);
  }

  public PanelPlan(Machine machine, List<Place> places, Words words) {
    this(machine, places, words, List.of());
  }

  /** The same panel with some of its sockets outlined. */
  public PanelPlan outlining(List<Place> some) {
    return new PanelPlan(machine, places, words, some);
  }

  /**
   * One socket.
   *
   * @param plug the shape drawn in it: the right plug, or the first that fits
   * @param leads what goes in, and the cables used
   * @param misfits what else fits but must not go in
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

  /** How a plan uses a socket. */
  public enum Use {
    USED,
    ALSO_FITS,
    UNUSED
  }

  /**
   * Something that goes into a socket, and the cables in between.
   *
   * @param hand what the user plugs in: the last cable, or the thing itself
   */
  public record Lead(String name, String hand, Optional<String> through) {}

  /**
   * Something that fits but does not belong: what it is, what would happen, and how bad that is.
   */
  public record Misfit(String what, String outcome, Mark mark) {}
}
