package stackside.derive;

import stackside.derive.circuit.Circuits;
import stackside.derive.coverage.Coverage;
import stackside.model.Unit;

/** A unit with everything that follows from its content alone, whatever the day. */
public record Analysis(Unit unit, Coverage coverage, Circuits circuits) {

  /** Works out all analyses of a unit. */
  public static Analysis of(Unit unit) {
    return new Analysis(unit, Coverage.of(unit), Circuits.of(unit));
  }
}
