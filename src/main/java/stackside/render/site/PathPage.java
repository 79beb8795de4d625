package stackside.render.site;

import java.util.List;

/**
 * What people in a role read, in order, and how long it takes.
 *
 * @param key identifies where a device stores what its reader has read
 * @param record the path of the printable record
 * @param sections what follows below
 */
public record PathPage(
    PageFrame frame, String key, RichLine lead, String record, List<Read> reads, List<Section> sections)
    implements Page {
  public PathPage {
    reads = List.copyOf(reads);
    sections = List.copyOf(sections);
  }

  /** One thing to read. */
  public record Read(String id, RichLine line, String name, int minutes, String time) {}

  @Override
  public String template() {
    return "path.ftlh";
  }
}
