package stackside.render.site;

import java.util.List;
import java.util.Optional;

/** A part of a section. Each kind has a macro with its name in {@code parts.ftlh}. */
public sealed interface Part {

  /** The name of the macro that renders it. */
  String kind();

  /** Labels with their values. */
  record Facts(List<Fact> facts) implements Part {
    public Facts {
      facts = List.copyOf(facts);
    }

    @Override
    public String kind() {
      return "facts";
    }

    /** One label and its values, one per line. */
    public record Fact(String label, List<RichLine> values) {
      public Fact {
        values = List.copyOf(values);
      }
    }
  }

  /** A table. The first cell of each row names the row. */
  record Grid(String caption, List<String> head, List<GridRow> rows, Reading reading)
      implements Part {
    /** Number of columns that fit side by side on a phone. */
    private static final int NARROW = 3;

    public Grid {
      head = List.copyOf(head);
      rows = List.copyOf(rows);
      for (GridRow row : rows) {
        if (row.cells().size() + 1 != head.size()) {
          throw new IllegalArgumentException(
              "a row of " + (row.cells().size() + 1) + " cells under the head " + head);
        }
      }
    }

    @Override
    public String kind() {
      return "grid";
    }

    Grid(String caption, List<String> head, List<GridRow> rows) {
      this(caption, head, rows, Reading.BY_ROW);
    }

    /** The same table, meant to be read down its columns. */
    Grid byColumn() {
      return new Grid(caption, head, rows, Reading.BY_COLUMN);
    }

    /**
     * Whether, on a phone, each row becomes a list with every cell under the head of its column.
     */
    public boolean folds() {
      return reading == Reading.BY_ROW && head.size() > NARROW;
    }

    /** How a table is read: row by row, or by comparing rows. */
    public enum Reading {
      BY_ROW,
      BY_COLUMN
    }

    /** One row. Links can lead to its anchor. */
    public record GridRow(Optional<String> anchor, RichLine name, List<RichLine> cells) {
      public GridRow {
        cells = List.copyOf(cells);
      }

      static GridRow of(RichLine name, RichLine... cells) {
        return new GridRow(Optional.empty(), name, List.of(cells));
      }
    }
  }

  /** A list of lines, most of them links. */
  record Lines(List<RichLine> lines) implements Part {
    public Lines {
      lines = List.copyOf(lines);
    }

    @Override
    public String kind() {
      return "lines";
    }
  }

  /** Steps to be done in order. */
  record Steps(List<Step> steps) implements Part {
    public Steps {
      steps = List.copyOf(steps);
    }

    @Override
    public String kind() {
      return "steps";
    }

    /** One step: what to do, what to see, and remarks below. */
    public record Step(RichLine action, Optional<RichLine> see, List<RichLine> notes) {
      public Step {
        notes = List.copyOf(notes);
      }
    }
  }

  /** One paragraph. */
  record Say(RichLine line) implements Part {
    @Override
    public String kind() {
      return "say";
    }
  }

  /** A box with a heavy frame, for what must not be missed. */
  record Box(String title, List<RichLine> lines) implements Part {
    public Box {
      lines = List.copyOf(lines);
    }

    @Override
    public String kind() {
      return "box";
    }
  }

  /**
   * Whether a card on a wall is the one in use: lines for everyone, and answers. A script shows the
   * answers that fit the edition in the address and the date.
   *
   * @param edition the one in use, with the first signs of its fingerprint; empty where none is
   * @param review the day by which it must be reviewed, as {@code 2026-11-25}; or empty
   */
  record CardCheck(String edition, String review, List<RichLine> lines, List<Answer> answers)
      implements Part {
    public CardCheck {
      lines = List.copyOf(lines);
      answers = List.copyOf(answers);
    }

    @Override
    public String kind() {
      return "cardcheck";
    }

    /** One answer, hidden until a script knows that it applies. */
    public record Answer(String when, RichLine line) {}
  }

  /** Prose of the unit, as HTML. */
  record Text(Html html) implements Part {
    @Override
    public String kind() {
      return "text";
    }
  }

  /**
   * A drawing for wide and for narrow pages, with a table of the same facts.
   *
   * @param wide for a computer screen
   * @param narrow for a phone
   */
  record Figure(Html wide, Html narrow, Optional<Grid> table) implements Part {
    @Override
    public String kind() {
      return "figure";
    }
  }

  /** The unit's prose in a box with a heavy frame: what to watch for before using what follows. */
  record Caution(String title, Html html) implements Part {
    @Override
    public String kind() {
      return "caution";
    }
  }

  /** Large links to choose from. */
  record Picks(List<Pick> picks) implements Part {
    public Picks {
      picks = List.copyOf(picks);
    }

    @Override
    public String kind() {
      return "picks";
    }

    /** One choice: its words, a note below, and possibly a small drawing. */
    public record Pick(String text, String href, String note, Optional<Html> drawing) {}
  }

  /** Text as an author types it into a file. */
  record Source(String text) implements Part {
    @Override
    public String kind() {
      return "source";
    }
  }

  /** Two drawings side by side, or one below the other on a phone. */
  record Pair(Side first, Side second) implements Part {
    @Override
    public String kind() {
      return "pair";
    }
  }

  /** Several drawings side by side, as many per row as fit. */
  record Sides(List<Side> sides) implements Part {
    public Sides {
      sides = List.copyOf(sides);
    }

    @Override
    public String kind() {
      return "sides";
    }
  }

  record Side(RichLine heading, Html drawing) {}
}
