package stackside.model;

import java.util.List;
import stackside.source.Location;
import stackside.source.Problem;

/**
 * A thing that the content names but that could not be read or linked. It keeps its problems. The
 * list is empty if the thing is broken only because something it uses is broken. Rules about
 * missing things do not report it.
 */
public record Broken(ThingId id, Location at, List<Problem> problems) implements Thing {
  public Broken {
    problems = List.copyOf(problems);
  }

  @Override
  public String title() {
    return id.slug();
  }
}
