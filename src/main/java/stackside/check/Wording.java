package stackside.check;

import java.util.ArrayList;
import java.util.List;
import stackside.model.Fact;
import stackside.model.Level;
import stackside.model.LevelScale;
import stackside.model.Mode;
import stackside.model.PedalAction;
import stackside.model.Sentence;
import stackside.model.Thing;

/** Puts names into sentences in one way for all rules. */
final class Wording {
  private static final int FEW = 4;

  private Wording() {}

  /** What people call a thing, in quotes. */
  static String quoted(Thing thing) {
    return "'" + thing.title() + "'";
  }

  /** {@code 'A', 'B' and 'C'}, each once. */
  static String quoted(List<? extends Thing> things) {
    return list(things.stream().map(Wording::quoted).toList());
  }

  /** {@code a, b and c}, each once. */
  static String list(List<String> words) {
    List<String> each = words.stream().distinct().toList();
    int last = each.size() - 1;
    return last < 1
        ? String.join("", each)
        : String.join(", ", each.subList(0, last)) + " and " + each.get(last);
  }

  /** The first few of many: {@code a, b, c and 5 more sites}. */
  static String few(List<String> words, String noun) {
    List<String> each = words.stream().distinct().toList();
    if (each.size() <= FEW) {
      return list(each);
    }
    List<String> first = new ArrayList<>(each.subList(0, FEW - 1));
    first.add((each.size() - FEW + 1) + " more " + noun);
    return list(first);
  }

  /** The machine's name for its level, followed by the level: {@code rung 2}. */
  static String level(Mode mode, Level level) {
    return mode.level().map(scale -> Sentence.within(scale.name().value())).orElse("level")
        + " "
        + level;
  }

  /** The levels of a scale: {@code 1 to 4} or {@code low, medium and high}. */
  static String levels(LevelScale scale) {
    return scale.names().isEmpty()
        ? scale.from().orElseThrow().value() + " to " + scale.to().orElseThrow().value()
        : list(scale.names().stream().map(Fact::value).toList());
  }

  /** What a pedal is for. */
  static String doing(PedalAction action) {
    return switch (action) {
      case CUT -> "cutting";
      case COAGULATION -> "coagulation";
    };
  }
}
