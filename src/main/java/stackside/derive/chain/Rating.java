package stackside.derive.chain;

import stackside.model.Accessory;
import stackside.model.Fact;
import stackside.quantity.PeakVolts;

/** The rated voltage of one part of a chain. */
public record Rating(Accessory part, Fact<PeakVolts> rated) {}
