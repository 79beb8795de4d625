package stackside.derive.question;

import java.util.List;
import java.util.Locale;
import stackside.derive.circuit.OutcomeClass;
import stackside.model.Asset;
import stackside.model.Contact;
import stackside.model.DrillCheck;
import stackside.model.Electrode;
import stackside.model.Fact;
import stackside.model.Mode;
import stackside.model.PedalColour;
import stackside.model.PedalSetting;
import stackside.model.PedalUse;
import stackside.model.SelectionKind;
import stackside.model.Settings;
import stackside.model.SingleFault;

/**
 * An answer that can be right or wrong in a place. Two answers that mean the same are never offered
 * together, even if their words differ.
 */
public sealed interface Reply {

  /** Whether giving one answer amounts to giving the other. */
  boolean means(Reply other);

  /** The label of a socket. */
  record SocketLabel(String label) implements Reply {
    @Override
    public boolean means(Reply other) {
      return other instanceof SocketLabel socket && socket.label.equalsIgnoreCase(label);
    }
  }

  /** A stored program, or what is set by hand if the machine stores none. */
  record Set(Settings settings) implements Reply {

    /** Whether number and name are the same, or the pedals do the same. */
    @Override
    public boolean means(Reply other) {
      return other instanceof Set set && (isProgram(set) || doesAs(set));
    }

    private boolean isProgram(Set other) {
      return settings
          .program()
          .flatMap(
              here ->
                  other
                      .settings
                      .program()
                      .filter(
                          there ->
                              here.slot().value().equals(there.slot().value())
                                  && here.shownAs().value().equals(there.shownAs().value())))
          .isPresent();
    }

    private boolean doesAs(Set other) {
      return new OnePedal(settings.yellow()).means(new OnePedal(other.settings.yellow()))
          && new OnePedal(settings.blue()).means(new OnePedal(other.settings.blue()));
    }
  }

  /** Without current. */
  record Cold() implements Reply {
    @Override
    public boolean means(Reply other) {
      return other instanceof Cold;
    }
  }

  /** Not approved. */
  record NotApproved() implements Reply {
    @Override
    public boolean means(Reply other) {
      return other instanceof NotApproved;
    }
  }

  /** What is set on one pedal: mode, level and limit, or nothing if it is unassigned. */
  record OnePedal(PedalUse use) implements Reply {

    @Override
    public boolean means(Reply other) {
      return other instanceof OnePedal pedal
          && use.setting()
              .map(here -> pedal.use.setting().filter(there -> same(here, there)).isPresent())
              .orElse(pedal.use.setting().isEmpty());
    }

    /**
     * The same setting of the same mode. Another name for the same kind of current does not make it
     * another mode.
     */
    private static boolean same(PedalSetting one, PedalSetting other) {
      Mode mode = one.mode().value();
      Mode that = other.mode().value();
      return one.level().map(Fact::value).equals(other.level().map(Fact::value))
          && one.limit().map(Fact::value).equals(other.limit().map(Fact::value))
          && (mode.name().value().equalsIgnoreCase(that.name().value())
              || mode.current().value() == that.current().value());
    }
  }

  /** A pedal by its position, counted from the left. */
  record PedalAt(PedalColour colour, int number, int count) implements Reply {
    @Override
    public boolean means(Reply other) {
      return equals(other);
    }
  }

  /** A check of a drill. */
  record Check(DrillCheck check) implements Reply {

    /**
     * Whether the words are the same, or both checks mend the same fault, so that neither could be
     * called wrong.
     */
    @Override
    public boolean means(Reply other) {
      return other instanceof Check that
          && (bare(check).equals(bare(that.check))
              || check.mends().isEmpty()
              || that.check.mends().isEmpty()
              || mends(check).stream().anyMatch(mends(that.check)::contains));
    }

    private static String bare(DrillCheck check) {
      return check.action().value().toLowerCase(Locale.ROOT).replaceAll("\\W+", " ");
    }

    private static List<SingleFault> mends(DrillCheck check) {
      return check.mends().stream().map(fault -> fault.value()).toList();
    }
  }

  /** The outcome of a fault. */
  record Comes(OutcomeClass outcome) implements Reply {
    @Override
    public boolean means(Reply other) {
      return equals(other);
    }
  }

  /** How the live socket is selected. */
  record Selected(SelectionKind kind) implements Reply {
    @Override
    public boolean means(Reply other) {
      return equals(other);
    }
  }

  /** A neutral electrode. */
  record Plate(Electrode electrode) implements Reply {
    @Override
    public boolean means(Reply other) {
      return other instanceof Plate plate
          && (plate.electrode.id().equals(electrode.id())
              || plate.electrode.title().equalsIgnoreCase(electrode.title()));
    }
  }

  /** Somebody to call. One number is one contact, whatever it is called. */
  record Call(Contact contact) implements Reply {
    @Override
    public boolean means(Reply other) {
      return other instanceof Call call
          && call.contact.phone().value().equalsIgnoreCase(contact.phone().value());
    }
  }

  /** A card, identified by its generator's number and its edition. */
  record Card(Asset asset, String edition) implements Reply {
    @Override
    public boolean means(Reply other) {
      return other instanceof Card card && card.asset.id().equals(asset.id());
    }
  }
}
