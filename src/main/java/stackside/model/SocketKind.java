package stackside.model;

/** What a socket is for. */
public enum SocketKind implements Word {
  MONOPOLAR,
  BIPOLAR,
  NEUTRAL,
  ARGON,
  FOOT_SWITCH
}
