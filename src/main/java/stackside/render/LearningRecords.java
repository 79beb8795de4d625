package stackside.render;

import stackside.model.ThingId;

/** Where the printable record of a path is in the site folder. */
public final class LearningRecords {

  private LearningRecords() {}

  /** The first sheet; nearly every record has only one. */
  public static String path(ThingId path) {
    return "records/" + path.slug() + ".pdf";
  }

  /** A sheet, counted from 1. */
  public static String path(ThingId path, int sheet) {
    return sheet == 1 ? path(path) : "records/" + path.slug() + "-" + sheet + ".pdf";
  }
}
