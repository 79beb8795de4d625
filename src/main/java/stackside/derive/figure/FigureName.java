package stackside.derive.figure;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stackside.model.Kind;
import stackside.model.Word;

/** The figures that a handbook page can ask for, and the kind of thing that each is about. */
public enum FigureName implements Word {
  CURRENT_DENSITY,
  POWER_AGAINST_LOAD(Kind.MODE),
  WAVEFORMS(Kind.MODE),
  STALK_HEATING,
  FRONT_PANELS(Kind.MACHINE),
  WAVES_AND_EFFECT,
  TISSUE_TEMPERATURE,
  LIFT,
  PLATE_PLACEMENT,
  STALK_AND_FAR_WALL,

  // Tables of what the unit has
  SOCKETS_HERE,
  PLATES_HERE,
  MODES_HERE,
  RATINGS_HERE,
  ARGON_HERE,
  BIPOLAR_HERE,
  WALLS_HERE,
  LESIONS_HERE,
  CHECKLISTS_HERE,
  DRILLS_HERE,
  OUTPUT_CHECKS_HERE,
  FOOT_SWITCHES_HERE;

  @SuppressWarnings("ImmutableEnumChecker") // an Optional of an enum
  private final Optional<Kind> about;

  FigureName() {
    this.about = Optional.empty();
  }

  FigureName(Kind about) {
    this.about = Optional.of(about);
  }

  /** The kind of thing that the figure is about; absent if there is none. */
  public Optional<Kind> about() {
    return about;
  }

  /** The figure of this name. */
  public static Optional<FigureName> named(String word) {
    return Arrays.stream(values()).filter(name -> name.word().equals(word)).findFirst();
  }

  /** All names, as authors write them. */
  public static List<String> words() {
    return Arrays.stream(values()).map(Word::word).toList();
  }
}
