package stackside.derive.difference;

import stackside.model.Word;

/** How dangerous a difference is to somebody who comes from the other room, worst first. */
public enum Rank implements Word {
  /** The old habit goes wrong, and nothing warns. */
  SILENT,
  /** What warns, or whether it blocks, is different. */
  ALARM,
  /** Names, numbers and places are different. */
  LABEL
}
