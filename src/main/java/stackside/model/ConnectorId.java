package stackside.model;

/**
 * The form of a plug or connector. Two ends of the same form fit together, whichever machine or
 * cable they belong to.
 */
public record ConnectorId(String slug) implements Comparable<ConnectorId> {
  public ConnectorId {
    LampId.requireSlug(slug, "a plug or connector");
  }

  public static ConnectorId parse(String text) {
    return new ConnectorId(text);
  }

  @Override
  public int compareTo(ConnectorId other) {
    return slug.compareTo(other.slug);
  }

  @Override
  public String toString() {
    return slug;
  }
}
