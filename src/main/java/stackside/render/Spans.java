package stackside.render;

import java.util.Optional;
import stackside.model.PanelPlace;
import stackside.model.SlotRange;
import stackside.quantity.Band;
import stackside.quantity.LoadRange;
import stackside.quantity.PowerRange;
import stackside.quantity.Quantity;

/** Words for ranges and places: {@code 10 W to 120 W in steps of 5 W}. */
public final class Spans {
  private final Words words;

  public Spans(Words words) {
    this.words = words;
  }

  public String text(LoadRange range) {
    return fromTo(Numbers.text(range.from()), Numbers.text(range.to()));
  }

  public String text(PowerRange range) {
    return words.say(
        "span.steps",
        fromTo(Numbers.text(range.from()), Numbers.text(range.to())),
        Numbers.text(range.step()));
  }

  public String text(SlotRange range) {
    return fromTo(Numbers.count(range.from()), Numbers.count(range.to()));
  }

  /** A range of sizes or weights: {@code 20 mm and over}. */
  public <Q extends Quantity & Comparable<Q>> String text(Band<Q> band) {
    Optional<String> from = band.from().map(Numbers::text);
    Optional<String> below = band.below().map(Numbers::text);
    if (from.isPresent() && below.isPresent()) {
      return fromTo(from.get(), below.get());
    }
    return from.map(least -> words.say("span.over", least))
        .or(() -> below.map(most -> words.say("span.under", most)))
        .orElseGet(() -> words.say("span.any"));
  }

  private String fromTo(String from, String to) {
    return words.say("span.from-to", from, to);
  }

  /** Where a socket is, seen from the front. */
  public String text(PanelPlace place) {
    return words.say("span.place", place.row(), place.column());
  }
}
