package stackside.derive.signed;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What can be done with cards that hang, or are about to. */
public enum Deed {
  /** What is agreed is published. */
  ISSUE,
  /** Cards are taken out of use at once. */
  WITHDRAWAL,
  /** What was out of use may be issued again. */
  LIFTING;

  /** The word as ledger and register write it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The deed with this word. */
  public static Optional<Deed> named(String word) {
    return Arrays.stream(values()).filter(deed -> deed.word().equals(word)).findFirst();
  }
}
