package stackside.render.site;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A part of a section. Each kind has a macro of its name in {@code parts.ftlh}. */
public sealed interface Part {

  /** The name of the macro that places it. */
  default String kind() {
    return getClass().getSimpleName().toLowerCase(Locale.ROOT);
  }

  /** Labels with what stands behind them. */
  record Facts(List<Fact> facts) implements Part {
    public Facts {
      facts = List.copyOf(facts);
    }

    /** One label and its values, each on a line of its own. */
    public record Fact(String label, List<Line> values) {
      public Fact {
        values = List.copyOf(values);
      }
    }
  }

  /** A table: the first cell of each row names the row. */
  record Grid(String caption, List<String> head, List<Row> rows, Reading reading) implements Part {
    /** As many columns stand side by side on a telephone. */
    private static final int NARROW = 3;

    public Grid {
      head = List.copyOf(head);
      rows = List.copyOf(rows);
    }

    Grid(String caption, List<String> head, List<Row> rows) {
      this(caption, head, rows, Reading.BY_ROW);
    }

    /** The same table, to be read down its columns. */
    Grid byColumn() {
      return new Grid(caption, head, rows, Reading.BY_COLUMN);
    }

    /** Whether on a telephone each row becomes a list, every cell under the head of its column. */
    public boolean folds() {
      return reading == Reading.BY_ROW && head.size() > NARROW;
    }

    /** How a table is read: each row for itself, or one row against the others. */
    public enum Reading {
      BY_ROW,
      BY_COLUMN
    }

    /** One row; its anchor lets links lead to it. */
    public record Row(Optional<String> anchor, Line name, List<Line> cells) {
      public Row {
        cells = List.copyOf(cells);
      }

      static Row of(Line name, Line... cells) {
        return new Row(Optional.empty(), name, List.of(cells));
      }
    }
  }

  /** A list of lines, most of them links. */
  record Lines(List<Line> lines) implements Part {
    public Lines {
      lines = List.copyOf(lines);
    }
  }

  /** Steps that are done in order. */
  record Steps(List<Step> steps) implements Part {
    public Steps {
      steps = List.copyOf(steps);
    }

    /** One step: what to do, what to see, and remarks below. */
    public record Step(Line action, Optional<Line> see, List<Line> notes) {
      public Step {
        notes = List.copyOf(notes);
      }
    }
  }

  /** One paragraph. */
  record Say(Line line) implements Part {}

  /** A box with a heavy frame: what must not be missed. */
  record Box(String title, List<Line> lines) implements Part {
    public Box {
      lines = List.copyOf(lines);
    }
  }

  /**
   * Whether a card on a wall is the one in use: what stands there for everybody, and answers of
   * which a script shows those that fit the edition in the address and the day.
   *
   * @param edition the one in use; empty where none is
   * @param review the day by which it must be reviewed, as {@code 2026-11-25}; or empty
   */
  record CardCheck(String edition, String review, List<Line> lines, List<Answer> answers)
      implements Part {
    public CardCheck {
      lines = List.copyOf(lines);
      answers = List.copyOf(answers);
    }

    /** One answer, hidden until a script knows that it fits. */
    public record Answer(String when, Line line) {}
  }

  /** Prose of the unit, as HTML. */
  record Text(Html html) implements Part {}

  /**
   * A drawing, wide and narrow, with the same facts as a table.
   *
   * @param wide for a screen
   * @param narrow for a telephone
   */
  record Figure(Html wide, Html narrow, Optional<Grid> table) implements Part {}

  /** Prose of the unit in a box with a heavy frame: what to mind before what stands below. */
  record Caution(String title, Html html) implements Part {}

  /** Large links of which one is picked. */
  record Picks(List<Pick> picks) implements Part {
    public Picks {
      picks = List.copyOf(picks);
    }

    /** One of them: its words, what stands below, perhaps a small drawing. */
    public record Pick(String text, String href, String note, Optional<Html> drawing) {}
  }

  /** Words as an author types them into a file. */
  record Source(String text) implements Part {}

  /** Two drawings side by side, one below the other on a telephone. */
  record Pair(Side first, Side second) implements Part {}

  /** Several drawings side by side, as many to a row as there is room for. */
  record Sides(List<Side> sides) implements Part {
    public Sides {
      sides = List.copyOf(sides);
    }
  }

  /** One of several drawings, with its heading. */
  record Side(Line heading, Html drawing) {}
}
