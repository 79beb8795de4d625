package stackside.model;

import java.util.List;

/**
 * The pin centres of a plug in millimetres, seen from the front of the machine: x to the right, y
 * down.
 */
public record PinShape(List<Pin> pins) {
  /** One pin's centre in millimetres. */
  public record Pin(double x, double y) {}

  public PinShape {
    pins = List.copyOf(pins);
    if (pins.isEmpty()) {
      throw new UnreadableText(
          "the plug has no pins", "write at least one pin as [across, down] in mm");
    }
  }
}
