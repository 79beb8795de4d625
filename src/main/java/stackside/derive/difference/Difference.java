package stackside.derive.difference;

import java.util.List;
import stackside.derive.circuit.FailureSign;
import stackside.derive.circuit.OutcomeClass;
import stackside.derive.coverage.Cell;
import stackside.model.Accessory;
import stackside.model.Condition;
import stackside.model.Fact;
import stackside.model.FootSwitch;
import stackside.model.Instrument;
import stackside.model.Machine;
import stackside.model.MonitorKind;
import stackside.model.Pedal;
import stackside.model.PedalUse;
import stackside.model.Premises;
import stackside.model.Profile;
import stackside.model.SelectionKind;
import stackside.model.Settings;
import stackside.model.SingleFault;
import stackside.model.Socket;

/** One thing that differs between the room somebody comes from and the room they go to. */
public sealed interface Difference {

  Rank rank();

  /** A difference in which the old habit goes wrong and nothing warns. */
  sealed interface Silent extends Difference {
    @Override
    default Rank rank() {
      return Rank.SILENT;
    }
  }

  /** A difference of names, numbers or places. */
  sealed interface Label extends Difference {
    @Override
    default Rank rank() {
      return Rank.LABEL;
    }
  }

  /**
   * The same fault has a different outcome.
   *
   * @param fromSigns the failure signs in the room somebody comes from
   * @param toSigns the failure signs in the room somebody goes to
   */
  record FaultOutcomeChanged(
      SingleFault fault,
      OutcomeClass from,
      OutcomeClass to,
      List<FailureSign> fromSigns,
      List<FailureSign> toSigns)
      implements Difference {
    public FaultOutcomeChanged {
      fromSigns = List.copyOf(fromSigns);
      toSigns = List.copyOf(toSigns);
    }

    @Override
    public Rank rank() {
      return to.silent() ? Rank.SILENT : Rank.ALARM;
    }
  }

  /** The live socket is selected in a different way. */
  record SelectionChanged(SelectionKind from, SelectionKind to) implements Silent {}

  /** The neutral electrode is monitored in a different way. */
  record MonitorChanged(MonitorKind from, MonitorKind to) implements Difference {
    @Override
    public Rank rank() {
      return from.compareTo(to) < 0 ? Rank.SILENT : Rank.ALARM;
    }
  }

  /** The pedals are in a different order, or are different pedals. */
  record OtherPedals(FootSwitch from, FootSwitch to) implements Silent {
    static boolean same(FootSwitch one, FootSwitch other) {
      return meanings(one).equals(meanings(other));
    }

    private static List<List<Object>> meanings(FootSwitch footSwitch) {
      return footSwitch.pedals().stream().map(OtherPedals::meaning).toList();
    }

    private static List<Object> meaning(Pedal pedal) {
      return List.of(pedal.colour().value(), pedal.does().value());
    }
  }

  /** The same number or name stands for a different program. */
  record ProgramMeaningChanged(ProgramInUse from, ProgramInUse to) implements Silent {}

  /** The same question has a different kind of answer: with current, cold, or not approved. */
  record AnswerOfOtherKind(Cell from, Cell to) implements Silent {}

  /** The machine answers a condition in another way. */
  record ResponseChanged(Condition condition, Machine from, Machine to) implements Difference {
    @Override
    public Rank rank() {
      return Rank.ALARM;
    }
  }

  /** The same instrument goes into a socket with a different label. */
  record OtherSocket(Instrument instrument, List<Socket> from, List<Socket> to) implements Label {
    public OtherSocket {
      from = List.copyOf(from);
      to = List.copyOf(to);
    }
  }

  /** The same task has a different program, mode or setting. */
  record OtherSetting(Profile from, Profile to) implements Label {
    /** Whether the displays and the pedals show the same for both. */
    static boolean same(Settings one, Settings other) {
      return shown(one).equals(shown(other));
    }

    private static List<Object> shown(Settings settings) {
      return List.of(
          settings.program().map(program -> program.slot().value()),
          settings.program().map(program -> program.shownAs().value()),
          pedal(settings.yellow()),
          pedal(settings.blue()),
          settings.pressOnly().map(Fact::value),
          settings.argonFlow().map(Fact::value));
    }

    private static List<Object> pedal(PedalUse use) {
      return use.setting()
          .<List<Object>>map(
              set ->
                  List.of(
                      set.mode().value().name().value(),
                      set.level().map(Fact::value),
                      set.limit().map(Fact::value)))
          .orElse(List.of());
    }
  }

  /** Spares are kept in a different place. */
  record SparesElsewhere(String from, String to) implements Label {}

  /** Different people must be called. */
  record OtherContacts(Premises from, Premises to) implements Label {}

  /** Something is kept in only one of the two rooms. */
  record KeptInOneOnly(Accessory accessory, Side side) implements Label {
    /** The room where it is kept. */
    public enum Side {
      FROM,
      TO
    }
  }
}
