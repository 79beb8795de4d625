package stackside.render.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.render.Drawing;

/** A part of a card, measured and painted as a whole. */
public sealed interface Block {

  /**
   * Stands for the kind in the fingerprint of a card, and so never changes, whatever the type is
   * called: every card would get another edition.
   */
  String tag();

  /** Every phrase of the block, in reading order. */
  Stream<Phrase> phrases();

  /** Which room, generator and face this is, and when not to use the card. */
  record Identity(Phrase room, Phrase machine, Phrase asset, Phrase title, Phrase warning)
      implements Block {
    @Override
    public String tag() {
      return "Identity";
    }

    @Override
    public Stream<Phrase> phrases() {
      return Stream.of(room, machine, asset, title, warning);
    }
  }

  /** What the reader must know about the whole card: that it is a draft, or a demonstration. */
  record Marks(List<Phrase> marks) implements Block {
    public Marks {
      marks = List.copyOf(marks);
    }

    @Override
    public String tag() {
      return "Marks";
    }

    @Override
    public Stream<Phrase> phrases() {
      return marks.stream();
    }
  }

  /** What to do first whatever is wrong: the same words on every card. */
  record MakeSafe(List<Phrase> lines) implements Block {
    public MakeSafe {
      lines = List.copyOf(lines);
    }

    @Override
    public String tag() {
      return "MakeSafe";
    }

    @Override
    public Stream<Phrase> phrases() {
      return lines.stream();
    }
  }

  /** Drawings of the front panel and the pedals. */
  record Maps(Drawing sockets, List<Drawing> pedals) implements Block {
    public Maps {
      pedals = List.copyOf(pedals);
    }

    @Override
    public String tag() {
      return "Maps";
    }

    @Override
    public Stream<Phrase> phrases() {
      return Stream.empty();
    }
  }

  /** The approved answers, one row per distinct answer. */
  record Answers(List<Phrase> columns, List<AnswerRow> rows) implements Block {
    public Answers {
      columns = List.copyOf(columns);
      rows = List.copyOf(rows);
    }

    @Override
    public String tag() {
      return "Answers";
    }

    @Override
    public Stream<Phrase> phrases() {
      return Stream.concat(columns.stream(), rows.stream().flatMap(AnswerRow::phrases));
    }
  }

  /** The set-up checklist. */
  record SetUp(Phrase heading, List<StepLine> steps) implements Block {
    public SetUp {
      steps = List.copyOf(steps);
    }

    @Override
    public String tag() {
      return "SetUp";
    }

    @Override
    public Stream<Phrase> phrases() {
      return Stream.concat(Stream.of(heading), steps.stream().flatMap(StepLine::phrases));
    }
  }

  /**
   * One drill.
   *
   * @param sign what is seen and heard when the drill is needed
   * @param never what makes it worse
   */
  record Drilled(Phrase title, Phrase sign, Optional<Phrase> never, List<StepLine> steps)
      implements Block {
    public Drilled {
      steps = List.copyOf(steps);
    }

    @Override
    public String tag() {
      return "Drilled";
    }

    @Override
    public Stream<Phrase> phrases() {
      return Stream.concat(
          Stream.concat(Stream.of(title, sign), never.stream()),
          steps.stream().flatMap(StepLine::phrases));
    }
  }

  /** Whom to call, and when. */
  record Contacts(List<Call> calls) implements Block {

    /** One contact. */
    public record Call(Phrase phone, Phrase role, Phrase hours) {}

    public Contacts {
      calls = List.copyOf(calls);
    }

    @Override
    public String tag() {
      return "Contacts";
    }

    @Override
    public Stream<Phrase> phrases() {
      return calls.stream().flatMap(call -> Stream.of(call.phone(), call.role(), call.hours()));
    }
  }

  /** Edition, approval, review date, copies and fingerprint, in small type. */
  record Footer(List<Phrase> lines) implements Block {
    public Footer {
      lines = List.copyOf(lines);
    }

    @Override
    public String tag() {
      return "Footer";
    }

    @Override
    public Stream<Phrase> phrases() {
      return lines.stream();
    }
  }

  /**
   * The QR code, with the address that it leads to.
   *
   * @param held what the code itself contains: the address and, after a hash, the edition of this
   *     very card, so that the page can tell whether a later one has replaced it
   */
  record Code(Phrase caption, Phrase address, String held) implements Block {
    @Override
    public String tag() {
      return "Code";
    }

    @Override
    public Stream<Phrase> phrases() {
      return Stream.of(caption, address);
    }
  }
}
