package stackside.model;

/** The id of a lamp. Drills use it for the lamp with that id on any machine. */
public record LampId(String slug) implements Comparable<LampId> {
  public LampId {
    requireSlug(slug, "a lamp");
  }

  public static LampId parse(String text) {
    return new LampId(text);
  }

  static void requireSlug(String slug, String what) {
    if (!slug.matches("[a-z0-9]+(-[a-z0-9]+)*") || slug.length() > 60) {
      throw new UnreadableText(
          "'" + slug + "' is not a valid id for " + what,
          "use small letters, digits and single hyphens, as in 'three-pin'");
    }
  }

  @Override
  public int compareTo(LampId other) {
    return slug.compareTo(other.slug);
  }

  @Override
  public String toString() {
    return slug;
  }
}
