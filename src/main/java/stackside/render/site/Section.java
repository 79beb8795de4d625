package stackside.render.site;

import java.util.List;

/** A headed part of a page. */
public record Section(String id, String heading, List<Part> parts) {
  public Section {
    parts = List.copyOf(parts);
  }
}
