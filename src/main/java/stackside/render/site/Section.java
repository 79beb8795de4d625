package stackside.render.site;

import java.util.List;

/** A part of a page with a heading. */
public record Section(String id, String heading, List<Part> parts) {
  public Section {
    parts = List.copyOf(parts);
  }
}
