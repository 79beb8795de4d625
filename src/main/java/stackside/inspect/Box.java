package stackside.inspect;

/** A rectangle on a page, in millimetres from its top left corner. */
public record Box(double left, double top, double right, double bottom) {

  public double width() {
    return right - left;
  }

  public double height() {
    return bottom - top;
  }

  /** The least rectangle round both. */
  public Box with(Box other) {
    return new Box(
        Math.min(left, other.left),
        Math.min(top, other.top),
        Math.max(right, other.right),
        Math.max(bottom, other.bottom));
  }

  /** Whether the two share more than a hair's breadth both ways. */
  public boolean overlaps(Box other) {
    return Math.min(right, other.right) - Math.max(left, other.left) > HAIR
        && Math.min(bottom, other.bottom) - Math.max(top, other.top) > HAIR;
  }

  /** Whether the other lies in this one, give or take a hair's breadth. */
  public boolean holds(Box other) {
    return left - HAIR <= other.left
        && top - HAIR <= other.top
        && right + HAIR >= other.right
        && bottom + HAIR >= other.bottom;
  }

  private static final double HAIR = 0.1;
}
