package stackside.render.site;

import java.util.List;

/**
 * What somebody in a role reads, in order, with how long it takes.
 *
 * @param key names the place where a device keeps what its reader has read
 * @param record where the printable record lies
 * @param sections what stands below
 */
public record PathPage(
    Frame frame, String key, Line lead, String record, List<Read> reads, List<Section> sections)
    implements Page {
  public PathPage {
    reads = List.copyOf(reads);
    sections = List.copyOf(sections);
  }

  /** One thing to read. */
  public record Read(String id, Line line, String name, int minutes, String time) {}

  @Override
  public String template() {
    return "path.ftlh";
  }
}
