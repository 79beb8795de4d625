package stackside.render;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.render.PanelPlan.Lead;
import stackside.render.PanelPlan.Misfit;
import stackside.render.PanelPlan.Place;

/**
 * Finds the sockets of a front panel that differ from another panel, so that they can be outlined.
 */
public final class PanelChanges {

  private PanelChanges() {}

  /** The plan with an outline round each socket that is not the same on the other panel. */
  public static PanelPlan outlined(PanelPlan plan, PanelPlan other) {
    return plan.outlining(
        plan.places().stream().filter(place -> !knownFrom(other, place)).toList());
  }

  private static boolean knownFrom(PanelPlan other, Place place) {
    return other.places().stream().anyMatch(known -> same(known, place));
  }

  /** Compares label, kind, place, what goes in, and what would happen to anything else. */
  private static boolean same(Place one, Place other) {
    return one.label().equals(other.label())
        && one.socket().kind().value() == other.socket().kind().value()
        && one.socket().place().value().equals(other.socket().place().value())
        && one.plug()
            .map(plug -> plug.shape().value())
            .equals(other.plug().map(plug -> plug.shape().value()))
        && sorted(one.leads().stream().map(Lead::name))
            .equals(sorted(other.leads().stream().map(Lead::name)))
        && sorted(one.misfits().stream().map(Misfit::outcome))
            .equals(sorted(other.misfits().stream().map(Misfit::outcome)));
  }

  private static Set<String> sorted(Stream<String> words) {
    return words.collect(Collectors.toCollection(TreeSet::new));
  }
}
