package stackside.render.site;

import java.util.List;
import stackside.render.OutputFile;

/** The files that pages share: style sheet, script, fonts and their licence. */
final class StaticAssets {
  private static final String SCRIPTS = "/stackside/scripts/";
  private static final String LICENCES = "/META-INF/licences/";
  private static final String FONTS = "/stackside/fonts/";

  private StaticAssets() {}

  static List<OutputFile> files(Templates templates) {
    return List.of(
        OutputFile.text("assets/stackside.css", templates.text("assets/stackside.css")),
        OutputFile.text("assets/stackside.js", templates.text("assets/stackside.js")),
        OutputFile.text("assets/card.js", templates.text("assets/card.js")),
        OutputFile.text("assets/induction.js", templates.text("assets/induction.js")),
        OutputFile.text("assets/search.js", templates.text("assets/search.js")),
        new OutputFile("assets/minisearch.js", Templates.resource(SCRIPTS + "minisearch.js")),
        new OutputFile(
            "assets/minisearch-MIT.txt", Templates.resource(LICENCES + "minisearch-MIT.txt")),
        font("AtkinsonHyperlegibleNext-Regular.woff2"),
        font("AtkinsonHyperlegibleNext-Bold.woff2"),
        font("OFL.txt"));
  }

  private static OutputFile font(String name) {
    return new OutputFile("assets/" + name, Templates.resource(FONTS + name));
  }
}
