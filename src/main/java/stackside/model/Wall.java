package stackside.model;

/** The unit's own classes of wall thickness at a site, thinnest first. */
public enum Wall implements Word {
  THIN,
  MEDIUM,
  THICK
}
