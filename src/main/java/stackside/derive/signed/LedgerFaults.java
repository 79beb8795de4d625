package stackside.derive.signed;

import java.util.List;
import stackside.source.Fault;
import stackside.source.Severity;

/** The kinds of mistakes that a ledger of approvals can show. */
public final class LedgerFaults {
  public static final Fault ALTERED =
      error("ledger-altered", "a line of the ledger is not as it was signed");
  public static final Fault DATED_AHEAD =
      error("signature-dated-ahead", "a signature carries a date that is still to come");
  public static final Fault DATED_BACK =
      error("signature-dated-back", "a line of the ledger is dated before the line above it");
  public static final Fault NEVER_SIGNED =
      error("fingerprint-unknown", "a signature covers facts of which no copy was kept");

  private LedgerFaults() {}

  /** Every kind, in the order of this list. */
  public static List<Fault> all() {
    return List.of(ALTERED, DATED_AHEAD, DATED_BACK, NEVER_SIGNED);
  }

  private static Fault error(String id, String summary) {
    return new Fault(id, Severity.ERROR, summary);
  }
}
