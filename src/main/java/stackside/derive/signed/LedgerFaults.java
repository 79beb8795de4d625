package stackside.derive.signed;

import java.util.List;
import stackside.source.Fault;
import stackside.source.Severity;

/** The kinds of mistakes that a ledger of approvals can show. */
public final class LedgerFaults {
  public static final Fault ALTERED =
      error("ledger-altered", "a line of the ledger is not as it was signed");
  public static final Fault SHORTENED =
      error("ledger-shortened", "the ledger lacks lines that it had at the last issue");
  public static final Fault DATED_AHEAD =
      error("signature-dated-ahead", "a signature carries a date that is still to come");
  public static final Fault NEVER_SIGNED =
      error("fingerprint-unknown", "a signature covers facts of which no copy was kept");

  private LedgerFaults() {}

  /** Every kind, in the order of this list. */
  public static List<Fault> all() {
    return List.of(ALTERED, SHORTENED, DATED_AHEAD, NEVER_SIGNED);
  }

  private static Fault error(String id, String summary) {
    return new Fault(id, Severity.ERROR, summary);
  }
}
