package stackside.derive;

import stackside.model.Unit;

/** Everything that follows from the unit's content alone, whatever the day. */
public record Analysis(Unit unit) {

  public static Analysis of(Unit unit) {
    return new Analysis(unit);
  }
}
