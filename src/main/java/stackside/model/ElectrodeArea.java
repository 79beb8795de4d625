package stackside.model;

/** Whether a neutral electrode is in one piece or split for a contact-quality monitor. */
public enum ElectrodeArea implements Word {
  SPLIT,
  PLAIN
}
