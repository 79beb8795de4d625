package stackside.derive.edition;

import java.time.LocalDate;
import java.util.Optional;

/**
 * One card as an entry of the register leaves it.
 *
 * @param name room, asset, face and part in lower case with hyphens
 * @param code what the address printed on the card ends in
 * @param title what people call it: room, asset, face
 * @param room the id of the room where it hangs
 * @param asset the number of its generator
 * @param path the PDF in the site folder
 * @param copies how many laminated copies hang
 * @param edition whole, from 1
 * @param fingerprint of what the card says
 * @param since the day of issue that the card bears
 * @param review the day by which what it says must be looked at again
 * @param approval who agreed to what it says; absent where the unit asks for no signature
 * @param reason why it is out of use, or why it was issued, in words
 */
public record CardEntry(
    String name,
    String code,
    String title,
    String room,
    String asset,
    String path,
    int copies,
    int edition,
    String fingerprint,
    LocalDate since,
    Optional<LocalDate> review,
    Optional<Approval> approval,
    State state,
    String reason) {

  /** Whether a card may hang. */
  public enum State {
    CURRENT,
    OUT_OF_USE;

    String word() {
      return this == CURRENT ? "current" : "out-of-use";
    }
  }

  /** The card as it was, taken out of use. */
  public CardEntry outOfUse(String why) {
    return new CardEntry(
        name,
        code,
        title,
        room,
        asset,
        path,
        copies,
        edition,
        fingerprint,
        since,
        review,
        approval,
        State.OUT_OF_USE,
        why);
  }

  /** {@code 1 copy} or {@code 2 copies}. */
  public String copiesInWords() {
    return copies == 1 ? "1 copy" : copies + " copies";
  }

  public boolean current() {
    return state == State.CURRENT;
  }
}
