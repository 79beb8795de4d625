package stackside.render.site;

import java.util.List;

/** Templates and message files with which a unit replaces single ones of the program's. */
public record OwnTemplates(List<Template> templates) {

  /** The place of one below the folder of templates, with forward slashes, and its text. */
  public record Template(String name, String text) {}

  public OwnTemplates {
    templates = List.copyOf(templates);
  }

  /** The program's own look. */
  public static OwnTemplates none() {
    return new OwnTemplates(List.of());
  }
}
