package stackside.derive.standing;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stackside.model.Fact;
import stackside.model.Role;
import stackside.model.Signature;
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
   * @param given the latest signature in this role for what the thing says today
   * @param outdated the latest signature in this role for what the thing said earlier; absent where
   *     one is given
   */
  public record Wanted(Fact<Role> role, Optional<Signature> given, Optional<Signature> outdated) {}

  /** How a thing stands, worst first. */
  public enum State implements Word {
    /** Some role has never signed. */
    UNSIGNED,
    /** All have signed, some for what it said earlier. */
    CHANGED_SINCE,
    /** All have signed what it says today, too long ago. */
    REVIEW_OVERDUE,
    SIGNED
  }

  /** The roles that still have to sign. */
  public List<Wanted> missing() {
    return wanted.stream().filter(each -> each.given().isEmpty()).toList();
  }
}
