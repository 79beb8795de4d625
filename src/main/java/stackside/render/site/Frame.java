package stackside.render.site;

import java.util.List;
import java.util.Optional;
import stackside.render.Words;

/**
 * What every page has round its own content.
 *
 * @param path below the site folder
 * @param root the way from the page up to the site folder: empty or {@code ../}
 * @param about what tells the page from others of the same title, for the title of its window
 * @param home the link to the start page
 * @param trail the way to this page from the start page
 * @param menu the few places that every page leads to
 * @param more the other places, at the foot
 * @param marks what the reader must know of the whole: a draft, a demonstration
 * @param due by when what the page says must be looked at again
 * @param contacts whom to call; the same place in the order of every page
 */
public record Frame(
    String path,
    String root,
    String title,
    String about,
    String language,
    String unit,
    String home,
    List<Link> trail,
    List<Link> menu,
    List<Link> more,
    List<String> marks,
    Optional<Link> contacts,
    Optional<Due> due,
    String made,
    Words words) {

  /** A link with its words; "here" where it is the page itself. */
  public record Link(String text, String href, String state) {}

  /**
   * A day that the page prints, and on which it begins to warn wherever it is read.
   *
   * @param day as a script compares it: {@code 2027-03-04}
   * @param words until that day
   * @param overdue the words after it
   * @param past whether the page was made after it
   */
  public record Due(String day, String words, String overdue, boolean past) {}

  /** The same frame for a page that must be looked at again. */
  Frame due(Optional<Due> review) {
    return new Frame(
        path, root, title, about, language, unit, home, trail, menu, more, marks, contacts, review,
        made, words);
  }

  /** The same frame for a page whose title is not enough to know it by. */
  Frame about(String words) {
    return new Frame(
        path,
        root,
        title,
        words,
        language,
        unit,
        home,
        trail,
        menu,
        more,
        marks,
        contacts,
        due,
        made,
        this.words);
  }

  public Frame {
    trail = List.copyOf(trail);
    menu = List.copyOf(menu);
    more = List.copyOf(more);
    marks = List.copyOf(marks);
  }
}
