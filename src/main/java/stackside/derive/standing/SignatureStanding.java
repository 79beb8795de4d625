package stackside.derive.standing;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stackside.derive.signed.Ledger;
import stackside.model.Role;
import stackside.model.SignedKind;
import stackside.model.Thing;
import stackside.model.Word;

/**
 * Where one thing stands with its signatures.
 *
 * @param reviewBy the day by which it must be looked at again; absent until all have signed what it
 *     says today, or where the unit sets no interval
 */
public record SignatureStanding(
    Thing thing, SignedKind kind, List<Wanted> wanted, Optional<LocalDate> reviewBy, State state) {

  public SignatureStanding {
    wanted = List.copyOf(wanted);
  }

  /**
   * One wanted signature.
   *
   * @param given the latest decision of this role, if it is about what the thing says today
   * @param outdated the latest decision of this role, if it is about anything else
   */
  public record Wanted(
      Role role, Optional<Ledger.Decision> given, Optional<Ledger.Decision> outdated) {}

  /** How a thing stands, worst first. */
  public enum State implements Word {
    /** Some role has never decided about it. */
    UNSIGNED,
    /** The latest decision of some role is about what it said earlier. */
    CHANGED_SINCE,
    /** All decided last for what it says today, too long ago. */
    REVIEW_OVERDUE,
    SIGNED
  }

  /** The roles that still have to sign. */
  public List<Wanted> missing() {
    return wanted.stream().filter(each -> each.given().isEmpty()).toList();
  }
}
