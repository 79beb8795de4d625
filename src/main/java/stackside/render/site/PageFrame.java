package stackside.render.site;

import java.util.List;
import java.util.Optional;
import stackside.render.Words;

/**
 * What surrounds the content of every page.
 *
 * @param path path within the site folder
 * @param root the way from the page up to the site folder: empty or {@code ../}
 * @param about distinguishes the page from others with the same title, in the window title
 * @param home the link to the start page
 * @param trail the path to this page from the start page
 * @param menu the few places that every page links to
 * @param more the other places, linked at the foot
 * @param marks what the reader must know about the whole site: that it is a draft, or a
 *     demonstration
 * @param due the day by which the page must be reviewed
 * @param contacts whom to call; at the same position on every page
 */
public record PageFrame(
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

  /** A link with its words; its state is "here" if it is the page itself. */
  public record Link(String text, String href, String state) {}

  /**
   * A date printed on the page. Once it has passed, the page shows a warning wherever it is read.
   *
   * @param day in the form that a script compares: {@code 2027-03-04}
   * @param words the words until that day
   * @param overdue the words after it
   * @param past whether the page was made after that day
   */
  public record Due(String day, String words, String overdue, boolean past) {}

  /** The same frame for a page that must be reviewed. */
  PageFrame due(Optional<Due> review) {
    return new PageFrame(
        path, root, title, about, language, unit, home, trail, menu, more, marks, contacts, review,
        made, words);
  }

  /** The same frame for a page whose title alone does not identify it. */
  PageFrame about(String words) {
    return new PageFrame(
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

  public PageFrame {
    trail = List.copyOf(trail);
    menu = List.copyOf(menu);
    more = List.copyOf(more);
    marks = List.copyOf(marks);
  }
}
