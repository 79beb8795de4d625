package stackside.model;

import java.util.List;
import java.util.Optional;
import stackside.quantity.Watts;
import stackside.source.Location;

/**
 * Published output of a mode at one setting; it takes precedence over the calculated curve.
 *
 * @param points by rising load
 */
public record PublishedOutput(
    Location at,
    Optional<Fact<Level>> level,
    Optional<Fact<Watts>> limit,
    @AtLeastOne List<Fact<OutputPoint>> points) {
  public PublishedOutput {
    points = List.copyOf(points);
  }
}
