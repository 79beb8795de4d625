package stackside.render.site;

import java.util.List;
import java.util.Optional;
import stackside.render.Publication;
import stackside.render.Words;

/** Templates and message files with which a unit overrides some of the program's. */
public record OwnTemplates(List<Template> templates) {

  /** One file: its path within the template folder, with forward slashes, and its text. */
  public record Template(String name, String text) {}

  public OwnTemplates {
    templates = List.copyOf(templates);
  }

  /** The publication in the unit's own words, if the folder has some for its language. */
  public Publication worded(Publication publication) {
    String name = "words/" + publication.unit().details().language().value() + ".txt";
    return text(name)
        .map(text -> publication.saying(publication.words().with(Words.parse(text))))
        .orElse(publication);
  }

  /** Whether the program has a file of this name that a unit may override. */
  public static boolean replaceable(String name) {
    return name.matches("words/[A-Za-z0-9-]+\\.txt")
        || OwnTemplates.class.getResource(Templates.FOLDER + name) != null;
  }

  /** The text of a file. */
  Optional<String> text(String name) {
    return templates.stream()
        .filter(each -> each.name().equals(name))
        .map(Template::text)
        .findFirst();
  }

  /** The program's own look. */
  public static OwnTemplates none() {
    return new OwnTemplates(List.of());
  }
}
