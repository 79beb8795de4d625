package stackside.model;

import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The id of a thing, unique within its kind. Parts of a machine carry the machine's id before a
 * slash: {@code socket:cordgrass/mono-1}. Asset numbers may contain capitals; all other ids are
 * slugs.
 */
public record ThingId(Kind kind, String slug) implements Comparable<ThingId> {
  private static final Pattern SLUG = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
  private static final Pattern QUALIFIED = Pattern.compile("(" + SLUG + "/)?" + SLUG);
  private static final Pattern ASSET_NUMBER = Pattern.compile("[A-Za-z0-9]+(-[A-Za-z0-9]+)*");
  private static final Pattern DEVICE =
      Pattern.compile("con|prn|aux|nul|(com|lpt)[0-9]", Pattern.CASE_INSENSITIVE);
  private static final Comparator<ThingId> ORDER =
      Comparator.comparing(ThingId::kind).thenComparing(ThingId::slug);

  public ThingId {
    Pattern form = kind == Kind.ASSET ? ASSET_NUMBER : QUALIFIED;
    if (slug.length() > 80 || !form.matcher(slug).matches()) {
      throw new IllegalArgumentException("not an id of a " + kind.spoken() + ": " + slug);
    }
  }

  /** Whether an author may use this text as the id of a thing of this kind. */
  public static boolean isId(Kind kind, String text) {
    return text.length() <= 60
        && (kind == Kind.ASSET ? ASSET_NUMBER : SLUG).matcher(text).matches()
        && !isDevice(text);
  }

  /** Whether some operating systems reserve the name for a device and cannot create such a file. */
  public static boolean isDevice(String text) {
    return DEVICE.matcher(text).matches();
  }

  /** Reads {@code socket:cordgrass/mono-1}; absent if the form is wrong or the kind unknown. */
  public static Optional<ThingId> parse(String text) {
    int colon = text.indexOf(':');
    if (colon < 0) {
      return Optional.empty();
    }
    String slug = text.substring(colon + 1);
    return Kind.named(text.substring(0, colon))
        .filter(
            kind ->
                slug.length() <= 80
                    && (kind == Kind.ASSET ? ASSET_NUMBER : QUALIFIED).matcher(slug).matches())
        .map(kind -> new ThingId(kind, slug));
  }

  /** The id within its owner: {@code mono-1}. */
  public String local() {
    return slug.substring(slug.indexOf('/') + 1);
  }

  @Override
  public int compareTo(ThingId other) {
    return ORDER.compare(this, other);
  }

  /** The id as it appears in links. */
  @Override
  public String toString() {
    return kind.word() + ":" + slug;
  }
}
