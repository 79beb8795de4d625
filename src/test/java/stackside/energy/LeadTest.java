package stackside.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import stackside.quantity.LoadRange;
import stackside.quantity.Ohms;
import stackside.quantity.PeakVolts;
import stackside.quantity.Watts;

final class LeadTest {

  private static LimitedOutput curve(double from, double to, double watts, double peak) {
    return new LimitedOutput(
        new LoadRange(new Ohms(from), new Ohms(to)),
        new OutputLimits(
            Optional.empty(), Optional.of(new Watts(watts)), new PeakVolts(peak), new Crest(1)));
  }

  /** 80 W limited by 120 V RMS, against 30 W: the soft mode leads until 14400 / R falls to 30 W. */
  private static final LimitedOutput SOFT = curve(50, 2000, 80, 120);

  private static final LimitedOutput CUT = curve(50, 2000, 30, 400);

  @Test
  void aSoftModeLeadsUntilItsVoltageHoldsIt() {
    assertThat(Lead.of(SOFT, CUT).orElseThrow().value()).isCloseTo(480, within(1e-6));
  }

  @Test
  void whatDoesNotLeadAtTheLowestLoadDoesNotLead() {
    assertThat(Lead.of(CUT, SOFT)).isEmpty();
    assertThat(Lead.of(CUT, CUT)).isEmpty();
  }

  @Test
  void aLeadThroughoutReachesTheHighestCommonLoad() {
    assertThat(Lead.of(curve(100, 300, 80, 400), CUT)).contains(new Ohms(300));
    assertThat(Lead.of(curve(10, 3000, 80, 4000), CUT)).contains(new Ohms(2000));
  }

  @Test
  void curvesWithoutACommonLoadAreNotCompared() {
    assertThat(Lead.of(curve(10, 40, 80, 400), CUT)).isEmpty();
    assertThat(Lead.of(curve(3000, 4000, 80, 400), CUT)).isEmpty();
  }
}
