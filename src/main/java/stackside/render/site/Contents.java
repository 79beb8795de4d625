package stackside.render.site;

import java.util.List;

/** The pages that every page leads to, by the names of their files. */
final class Contents {
  /** At the head of a page. */
  static final List<String> MENU =
      List.of("choose", "rooms", "drills", "machines", "handbook", "search");

  /** At the foot of a page. */
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
