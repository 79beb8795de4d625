package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import stackside.model.Prose;

/** Splits a handbook page into parts: prose, with the figures that it asks for in between. */
final class HandbookText {
  private final Prose text;
  private final PageContext here;
  private final List<Part> parts = new ArrayList<>();
  private final List<Prose.Block> prose = new ArrayList<>();
  private int figures;

  private HandbookText(Prose text, PageContext here) {
    this.text = text;
    this.here = here;
  }

  static List<Part> of(Prose text, PageContext here) {
    HandbookText parts = new HandbookText(text, here);
    text.blocks().forEach(parts::add);
    parts.flush();
    return parts.parts;
  }

  private void add(Prose.Block block) {
    if (block instanceof Prose.Figure figure) {
      flush();
      figures++;
      parts.addAll(HandbookFigures.parts(figure, "figure-" + figures, here));
    } else {
      prose.add(block);
    }
  }

  private void flush() {
    if (!prose.isEmpty()) {
      parts.add(new Part.Text(ProseHtml.of(new Prose(text.at(), prose), here, 1)));
      prose.clear();
    }
  }
}
