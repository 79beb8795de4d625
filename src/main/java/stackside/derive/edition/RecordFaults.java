package stackside.derive.edition;

import java.util.List;
import stackside.source.Fault;
import stackside.source.Severity;

/**
 * What can become of a record that an issue rested on. Errors, for a reading or a measurement that
 * was altered vouches for a program or an output that nobody saw, and an event that is gone brings
 * back what had stopped counting. Cards that hang stay: they were right when they were issued.
 */
public final class RecordFaults {
  public static final Fault CHANGED =
      new Fault(
          "record-changed",
          Severity.ERROR,
          "a record of measurement or service is not as it was at the last issue");
  public static final Fault REMOVED =
      new Fault(
          "record-removed",
          Severity.ERROR,
          "a record of measurement or service that an issue knew is gone");

  private RecordFaults() {}

  /** Every kind, in the order of this list. */
  public static List<Fault> all() {
    return List.of(CHANGED, REMOVED);
  }
}
