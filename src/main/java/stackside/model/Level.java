package stackside.model;

/** A level of a mode, a whole number or a name, as the display shows it. */
public record Level(String text) {

  @Override
  public String toString() {
    return text;
  }
}
