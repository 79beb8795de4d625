package stackside.energy;

import stackside.quantity.AmpereSquaredSeconds;
import stackside.quantity.Amperes;
import stackside.quantity.Seconds;

/** The heating factor under a neutral electrode: current squared times time. */
public final class Heating {
  /** The period that a neutral electrode's limit refers to. */
  public static final Seconds MINUTE = new Seconds(60);

  private Heating() {}

  public static AmpereSquaredSeconds factor(Amperes rms, Seconds time) {
    return new AmpereSquaredSeconds(rms.value() * rms.value() * time.value());
  }

  /** How long a current may flow in any minute before a limit is reached; never more than 60 s. */
  public static Seconds inAnyMinute(AmpereSquaredSeconds limit, Amperes rms) {
    double square = rms.value() * rms.value();
    return square * MINUTE.value() <= limit.value() ? MINUTE : new Seconds(limit.value() / square);
  }

  /** The current that reaches a limit if it flows for this time. */
  public static Amperes current(AmpereSquaredSeconds limit, Seconds time) {
    return new Amperes(StrictMath.sqrt(limit.value() / time.value()));
  }
}
