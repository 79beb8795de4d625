package stackside.model;

/** How a cited statement is known. */
public enum CitationBasis implements Word {
  READ,
  RECALLED
}
