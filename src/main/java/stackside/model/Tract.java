package stackside.model;

/** Upper or lower gastrointestinal tract. */
public enum Tract implements Word {
  UPPER,
  LOWER
}
