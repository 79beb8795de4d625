package stackside.derive.circuit;

/** Whether something that has to be there is there: mains, foot switch, argon. */
public enum Supply {
  THERE,
  MISSING
}
