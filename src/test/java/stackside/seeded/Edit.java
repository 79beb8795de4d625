package stackside.seeded;

import java.util.ArrayList;
import java.util.List;

/**
 * One seeded fault: a content file as it reads after a slip.
 *
 * @param from the first edited line
 * @param to the last edited line
 */
record Edit(Spot spot, Slip slip, List<String> lines, int from, int to, String words) {

  static Edit of(Spot spot, Slip slip, Lines before, int replaced, List<String> instead) {
    List<String> lines = new ArrayList<>(before.of(spot.at().file()));
    int first = spot.at().line();
    List<String> old = List.copyOf(lines.subList(first - 1, first - 1 + replaced));
    for (int i = 0; i < replaced; i++) {
      lines.remove(first - 1);
    }
    lines.addAll(first - 1, instead);
    return new Edit(
        spot,
        slip,
        List.copyOf(lines),
        first,
        first + Math.max((int) String.join("\n", instead).lines().count(), 1) - 1,
        spot.at()
            + ": "
            + String.join(" / ", old).strip()
            + "  →  "
            + String.join(" / ", instead).strip());
  }

  String file() {
    return spot.at().file();
  }

  boolean touches(stackside.source.Location at) {
    return at.file().equals(file()) && from <= at.line() && at.line() <= to;
  }
}
