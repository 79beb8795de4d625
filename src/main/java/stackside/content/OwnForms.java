package stackside.content;

import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.model.AppliesTo;
import stackside.model.AtLeastOne;
import stackside.model.Evidence;
import stackside.model.Fact;
import stackside.model.Key;
import stackside.model.Kind;
import stackside.model.Level;
import stackside.model.Machine;
import stackside.model.OutputPoint;
import stackside.model.PedalSetting;
import stackside.model.PedalUse;
import stackside.model.PinShape;
import stackside.model.PublishedOutput;
import stackside.model.Unassigned;
import stackside.model.UnreadableText;
import stackside.quantity.Ohms;
import stackside.quantity.Watts;
import stackside.source.Location;

/** Binds the few types that are written in a form of their own. */
final class OwnForms {
  private static final List<Class<?>> TYPES =
      List.of(
          PedalUse.class,
          AppliesTo.class,
          Evidence.class,
          PublishedOutput.class,
          PinShape.class,
          OutputPoint.class);

  private final Findings findings;
  private final ValueBinder values;
  private final Mentions mentions;

  /** How an observation is written. */
  record Observed(
      Location at, Fact<LocalDate> observed, Fact<String> asset, Fact<String> software) {}

  /** How something for some machines is written. */
  record ForMachines(Location at, @AtLeastOne List<Fact<Machine>> machines) {}

  /** How a published output is written. */
  record PublishedAt(
      Location place, @Key("at") Setting setting, @AtLeastOne List<Fact<OutputPoint>> points) {}

  /** The level and limit that a published output holds at. */
  record Setting(Location at, Optional<Fact<Level>> level, Optional<Fact<Watts>> limit) {}

  OwnForms(Findings findings, ValueBinder values, Mentions mentions) {
    this.findings = findings;
    this.values = values;
    this.mentions = mentions;
  }

  boolean has(Class<?> type) {
    return TYPES.contains(type);
  }

  Optional<Object> bind(Class<?> type, SourceNode piece, BindingContext frame) {
    if (type == PedalUse.class) {
      return pedalUse(piece, frame);
    }
    if (type == AppliesTo.class) {
      return appliesTo(piece, frame);
    }
    if (type == Evidence.class) {
      return evidence(piece, frame);
    }
    if (type == PublishedOutput.class) {
      return part(PublishedAt.class, piece, frame).map(OwnForms::published);
    }
    return type == PinShape.class ? pins(piece, frame) : point(piece, frame);
  }

  private <T> Optional<T> part(Class<T> form, SourceNode piece, BindingContext frame) {
    return values.bind(form, piece, frame).map(form::cast);
  }

  private Optional<Object> pedalUse(SourceNode piece, BindingContext frame) {
    return isWord(piece, "unassigned")
        ? Optional.of(new Unassigned(piece.at()))
        : orWord(piece, frame, "'unassigned'")
            .flatMap(group -> values.bind(PedalSetting.class, group, frame));
  }

  private Optional<Object> appliesTo(SourceNode piece, BindingContext frame) {
    return isWord(piece, "all")
        ? Optional.of(new AppliesTo(piece.at(), List.of()))
        : orWord(piece, frame, "'all'")
            .flatMap(group -> part(ForMachines.class, group, frame))
            .map(some -> new AppliesTo(some.at(), some.machines()));
  }

  private static boolean isWord(SourceNode piece, String word) {
    return piece instanceof SourceNode.Scalar scalar && scalar.text().strip().equals(word);
  }

  /** The group of keys, if the one word that may replace it is not written. */
  private Optional<SourceNode> orWord(SourceNode piece, BindingContext frame, String word) {
    if (piece instanceof SourceNode.Scalar scalar && !scalar.nothing()) {
      findings.add(
          ReadingFaults.UNKNOWN_WORD
              .at(
                  piece.at(),
                  Quote.of(scalar.text()) + " is not a choice for " + Quote.of(frame.key()))
              .help("write " + word + ", or keys of its own"));
      return Optional.empty();
    }
    return Optional.of(piece);
  }

  private Optional<Object> evidence(SourceNode piece, BindingContext frame) {
    if (piece instanceof SourceNode.Mapping) {
      return part(Observed.class, piece, frame).flatMap(this::observed);
    }
    Optional<Object> basis = values.fact(Evidence.Basis.class, piece, frame).map(Fact::value);
    if (basis.filter(Evidence.Basis.OBSERVED::equals).isPresent()) {
      findings.add(
          ReadingFaults.WRONG_SHAPE
              .at(
                  piece.at(),
                  "'observed' does not say when, on which asset and with which software")
              .help("write it as {observed: DATE, asset: NUMBER, software: VERSION}"));
      return Optional.empty();
    }
    return basis.map(each -> Evidence.of((Evidence.Basis) each));
  }

  private Optional<Object> observed(Observed form) {
    return mentions
        .of(Kind.ASSET, form.asset())
        .map(
            asset ->
                Evidence.observed(
                    new Evidence.Observation(form.at(), form.observed(), asset, form.software())));
  }

  private static Object published(PublishedAt form) {
    return new PublishedOutput(
        form.place(), form.setting().level(), form.setting().limit(), form.points());
  }

  private Optional<Object> point(SourceNode piece, BindingContext frame) {
    return pair(piece, Ohms.class, Watts.class, "a load and a power", frame)
        .map(two -> new OutputPoint((Ohms) two.get(0), (Watts) two.get(1)));
  }

  private Optional<List<Object>> pair(
      SourceNode piece, Type first, Type second, String what, BindingContext frame) {
    if (!(piece instanceof SourceNode.Sequence sequence) || sequence.items().size() != 2) {
      findings.add(
          ReadingFaults.WRONG_SHAPE
              .at(piece.at(), "an item of " + Quote.of(frame.key()) + " is not " + what)
              .help("write " + what + " in square brackets with a comma between"));
      return Optional.empty();
    }
    Optional<Object> one = values.fact(first, sequence.items().get(0), frame).map(Fact::value);
    Optional<Object> two = values.fact(second, sequence.items().get(1), frame).map(Fact::value);
    return one.flatMap(a -> two.map(b -> List.of(a, b)));
  }

  private Optional<Object> pins(SourceNode piece, BindingContext frame) {
    if (!(piece instanceof SourceNode.Sequence sequence)) {
      values.refuseShape(piece, frame, Shape.LIST);
      return Optional.empty();
    }
    List<PinShape.Pin> pins = new ArrayList<>();
    for (SourceNode item : sequence.items()) {
      pair(item, Millimetre.class, Millimetre.class, "two distances in millimetres", frame)
          .map(two -> new PinShape.Pin(across(two, 0), across(two, 1)))
          .ifPresent(pins::add);
    }
    if (pins.size() < sequence.items().size()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new PinShape(pins));
    } catch (UnreadableText e) {
      findings.add(ReadingFaults.NO_SENSE.at(piece.at(), e.problem()).help(e.hint()));
      return Optional.empty();
    }
  }

  private static double across(List<Object> pair, int index) {
    return ((Millimetre) pair.get(index)).value();
  }

  /** A coordinate of a pin, which is written without its unit. */
  record Millimetre(double value) {
    private static final double FARTHEST = 500;

    /** Reads a plain number. */
    public static Millimetre parse(String text) {
      if (!text.matches("-?(0|[1-9]\\d{0,3})(\\.\\d{1,6})?")
          || Math.abs(Double.parseDouble(text)) > FARTHEST) {
        throw new UnreadableText(
            Quote.of(text) + " is not a distance on a front panel",
            "write millimetres as a plain number without unit, at most 500");
      }
      return new Millimetre(Double.parseDouble(text));
    }
  }
}
