package stackside.energy;

import stackside.quantity.Ohms;

/** A range of loads, both ends included; the two ends may be equal. */
public record LoadSpan(Ohms from, Ohms to) {

  public LoadSpan {
    if (from.value() > to.value()) {
      throw new IllegalArgumentException("no span of loads: " + from + " to " + to);
    }
  }

  public boolean holds(Ohms load) {
    return from.value() <= load.value() && load.value() <= to.value();
  }
}
