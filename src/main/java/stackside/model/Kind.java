package stackside.model;

import java.util.Arrays;
import java.util.Optional;

/** The kinds of things that have an id. Links and references use the word. */
public enum Kind {
  LOCATION("location"),
  CONTACT("contact"),
  ROLE("role"),
  PATIENT_GROUP("patients"),
  MACHINE("machine"),
  SOCKET("socket"),
  MODE("mode"),
  ASSET("asset"),
  INSTRUMENT("instrument"),
  CABLE("cable"),
  ELECTRODE("electrode"),
  FOOT_SWITCH("foot-switch"),
  SITE("site"),
  SITE_GROUP("site-group"),
  STEP("step"),
  LESION("lesion"),
  PROFILE("profile"),
  CHECKLIST("checklist"),
  DRILL("drill"),
  ROOM("room"),
  PATH("path"),
  HANDBOOK("handbook"),
  CITATION("source"),
  /** A part of the unit as a whole; only signatures refer to it. */
  UNIT("unit");

  private final String word;

  Kind(String word) {
    this.word = word;
  }

  /** The word before the colon of a link: {@code socket}. */
  public String word() {
    return word;
  }

  /** The kind as it reads in a sentence: {@code foot switch}. */
  public String spoken() {
    return word.replace('-', ' ');
  }

  /** The kind with this word. */
  public static Optional<Kind> named(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
  }
}
