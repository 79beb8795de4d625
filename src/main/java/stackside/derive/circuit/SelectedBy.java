package stackside.derive.circuit;

import stackside.model.SelectionKind;
import stackside.model.Word;

/** How the live socket was selected. */
public enum SelectedBy implements Word {
  PROGRAM,
  BUTTON,
  PLUG,
  FOOT_SWITCH,
  FIXED,
  POWER_ON;

  static SelectedBy of(SelectionKind kind) {
    return switch (kind) {
      case BY_PROGRAM -> PROGRAM;
      case BY_BUTTON -> BUTTON;
      case BY_PLUGGING_IN -> PLUG;
      case BY_FOOT_SWITCH -> FOOT_SWITCH;
      case FIXED -> FIXED;
    };
  }
}
