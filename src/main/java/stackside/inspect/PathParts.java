package stackside.inspect;

import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;

/** Takes a path apart where it starts anew. */
final class PathParts {
  private PathParts() {}

  static List<Path2D> of(GeneralPath path) {
    List<Path2D> parts = new ArrayList<>();
    double[] at = new double[6];
    Path2D part = new Path2D.Double();
    for (PathIterator each = path.getPathIterator(null); !each.isDone(); each.next()) {
      switch (each.currentSegment(at)) {
        case PathIterator.SEG_MOVETO -> {
          part = new Path2D.Double();
          part.moveTo(at[0], at[1]);
          parts.add(part);
        }
        case PathIterator.SEG_LINETO -> part.lineTo(at[0], at[1]);
        case PathIterator.SEG_QUADTO -> part.quadTo(at[0], at[1], at[2], at[3]);
        case PathIterator.SEG_CUBICTO -> part.curveTo(at[0], at[1], at[2], at[3], at[4], at[5]);
        default -> part.closePath();
      }
    }
    return parts;
  }
}
