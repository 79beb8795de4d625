package stackside.model;

/** What a mode's current is for, in the usual terms of the trade. */
public enum CurrentType implements Word {
  CUT,
  BLENDED_CUT,
  PULSED_CUT,
  SOFT_COAGULATION,
  FORCED_COAGULATION,
  SPRAY_COAGULATION,
  ARGON_PLASMA_COAGULATION
}
