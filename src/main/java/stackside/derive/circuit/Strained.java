package stackside.derive.circuit;

import stackside.derive.chain.Chain;
import stackside.derive.chain.Rating;
import stackside.derive.output.ModeSetting;
import stackside.model.Fact;
import stackside.quantity.PeakVolts;

/** A chain whose weakest part is rated below the peak voltage that it now carries. */
public record Strained(Chain chain, Rating weakest, ModeSetting setting, Fact<PeakVolts> peak) {}
