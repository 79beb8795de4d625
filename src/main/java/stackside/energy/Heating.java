package stackside.energy;

import stackside.quantity.AmpereSquaredSeconds;
import stackside.quantity.Amperes;
import stackside.quantity.Seconds;

/** The heating factor under a neutral electrode: current squared times time. */
public final class Heating {
  /** The stretch of time to which a neutral electrode's limit refers. */
  public static final Seconds MINUTE = new Seconds(60);

  private Heating() {}

  public static AmpereSquaredSeconds factor(Amperes rms, Seconds time) {
    return new AmpereSquaredSeconds(rms.value() * rms.value() * time.value());
  }

  /** How long a current may flow in any minute before a limit is reached; at most the minute. */
  public static Seconds inAnyMinute(AmpereSquaredSeconds limit, Amperes rms) {
    double square = rms.value() * rms.value();
    return square * MINUTE.value() <= limit.value() ? MINUTE : new Seconds(limit.value() / square);
  }

  /** The current that reaches a limit when it flows for a time. */
  public static Amperes current(AmpereSquaredSeconds limit, Seconds time) {
    return new Amperes(StrictMath.sqrt(limit.value() / time.value()));
  }
}
