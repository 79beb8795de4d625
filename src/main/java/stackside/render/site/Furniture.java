package stackside.render.site;

import java.util.List;
import stackside.render.OutputFile;

/** The files that pages share: style sheet, script, fonts and their licence. */
final class Furniture {
  private static final String FONTS = "/stackside/fonts/";

  private Furniture() {}

  static List<OutputFile> files(Templates templates) {
    return List.of(
        OutputFile.text("assets/stackside.css", templates.text("assets/stackside.css")),
        OutputFile.text("assets/stackside.js", templates.text("assets/stackside.js")),
        font("AtkinsonHyperlegibleNext-Regular.woff2"),
        font("AtkinsonHyperlegibleNext-Bold.woff2"),
        font("OFL.txt"));
  }

  private static OutputFile font(String name) {
    return new OutputFile("assets/" + name, Templates.resource(FONTS + name));
  }
}
