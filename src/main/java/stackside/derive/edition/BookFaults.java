package stackside.derive.edition;

import java.util.List;
import stackside.source.Fault;
import stackside.source.Severity;

/** What can be wrong between the ledger of a content folder and the register of its site folder. */
public final class BookFaults {
  public static final Fault SHORTENED =
      error("ledger-shortened", "the ledger lacks lines that the site folder knows of");
  public static final Fault SITE_OLDER =
      error("site-older", "the site folder is an older copy than the ledger tells of");
  public static final Fault APART =
      error("issued-apart", "the content and the site folder went on apart from each other");

  private BookFaults() {}

  /** Every kind, in the order of this list. */
  public static List<Fault> all() {
    return List.of(SHORTENED, SITE_OLDER, APART);
  }

  private static Fault error(String id, String summary) {
    return new Fault(id, Severity.ERROR, summary);
  }
}
