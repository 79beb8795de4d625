package stackside.derive.edition;

import java.util.Optional;

/**
 * What an issue does with one card.
 *
 * @param entry the card as the issue leaves it; absent for a card that was never issued and is not
 *     issued now
 * @param outcome what happens to it
 * @param reason in words
 */
public record Decision(String name, Outcome outcome, Optional<CardEntry> entry, String reason) {

  /** What can happen to a card. */
  public enum Outcome {
    /** What it says is new: the next whole edition, to be printed. */
    NEXT_EDITION,
    /** It says what it said: the same edition, nothing to print. */
    SAME_EDITION,
    /** It may not go out as it is now, so the last edition stays. */
    STAYS,
    /** It may not go out and never did. */
    NOT_YET,
    /** The last edition must come down. */
    OUT_OF_USE,
    /** It came down earlier and stays down. */
    STAYS_DOWN
  }

  /** Whether the register has to remember it. */
  public boolean changes() {
    return outcome == Outcome.NEXT_EDITION || outcome == Outcome.OUT_OF_USE;
  }

  /** Whether the card is made from the content as it is now. */
  public boolean madeNow() {
    return outcome == Outcome.NEXT_EDITION || outcome == Outcome.SAME_EDITION;
  }
}
