package stackside.model;

import java.util.Locale;

/** A choice from a closed list, written in kebab case in the content. */
public interface Word {
  /** The constant's name, as in every enum. */
  String name();

  /** The choice as an author writes it: {@code by-plugging-in}. */
  default String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The choice as it reads in a sentence: {@code by plugging in}. */
  default String spoken() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
