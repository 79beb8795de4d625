package stackside.render.site;

import java.util.List;

/** The pages that every page links to, by file name. */
final class Contents {
  /** Links at the top of a page. */
  static final List<String> MENU =
      List.of("choose", "rooms", "drills", "machines", "handbook", "search");

  /** Links at the foot of a page. */
  static final List<String> MORE =
      List.of(
          "coverage",
          "failure-signs",
          "differences",
          "checklists",
          "lesions",
          "sites",
          "instruments",
          "assets",
          "paths",
          "glossary",
          "cards",
          "changes",
          "standing",
          "due",
          "problems",
          "rules",
          "sources",
          "unit");

  private Contents() {}
}
