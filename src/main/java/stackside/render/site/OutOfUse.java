package stackside.render.site;

import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.regex.Pattern;
import stackside.derive.edition.CardEntry;
import stackside.derive.edition.Issue;
import stackside.render.Mark;
import stackside.render.OutputFile;

/**
 * Puts a notice at the top of every page about a generator whose card is out of use, and of every
 * page that leads to the card. A page that already has a notice gets a new one, never a second. A
 * card that stays in use against what a record shows has a notice too, which only an issue renews.
 */
final class OutOfUse {
  private static final String MAIN = "<main id=\"content\" tabindex=\"-1\">\n";
  private static final String OUT_OF_USE = "out of use";
  private static final String ASK_FIRST = "ask first";
  private static final String EARLIER =
      "(?s)" + MAIN + "<!-- " + OUT_OF_USE + " -->.*?<!-- so far -->\n";

  private final Website site;
  private final Templates templates;
  private static final Pattern TO_A_CARD = Pattern.compile("/c/[0-9a-z]+/index\\.html\"");

  private final List<CardEntry> down;
  private final List<CardEntry> doubted;

  private OutOfUse(Website site, Templates templates) {
    this.site = site;
    this.templates = templates;
    this.down =
        site.publication().editions().register().cards().values().stream()
            .filter(card -> !card.current() && !card.reason().equals(Issue.NO_SUCH_CARD))
            .toList();
    this.doubted =
        site.publication().editions().alarms().keySet().stream()
            .flatMap(name -> site.publication().editions().register().card(name).stream())
            .toList();
  }

  /** All files, with the notice on those pages that need it. */
  static List<OutputFile> marked(Collection<OutputFile> files, Website site, Templates templates) {
    OutOfUse marks = new OutOfUse(site, templates);
    return files.stream().map(marks::marked).toList();
  }

  private OutputFile marked(OutputFile file) {
    if (site.publication().draft() || !isMarked(file.path())) {
      return file;
    }
    String page = new String(file.bytes(), StandardCharsets.UTF_8).replaceFirst(EARLIER, MAIN);
    int at = page.indexOf(MAIN) + MAIN.length();
    if (at < MAIN.length()) {
      return OutputFile.text(file.path(), page);
    }
    String notices =
        box(file.path(), OUT_OF_USE, about(down, file.path(), page))
            + box(file.path(), ASK_FIRST, about(doubted, file.path(), page));
    return OutputFile.text(file.path(), page.substring(0, at) + notices + page.substring(at));
  }

  private static List<CardEntry> about(List<CardEntry> cards, String path, String page) {
    return cards.stream().filter(card -> isAbout(path, page, card)).toList();
  }

  /**
   * Whether a page is about a single room, generator or answer. Lists and the register cover
   * everything.
   */
  private static boolean isMarked(String path) {
    return path.endsWith(".html") && path.contains("/") && !path.startsWith("c/");
  }

  /**
   * An answer names its card only if that was made with it. Otherwise any card of the room may be
   * the one that shows it.
   */
  private static boolean isAbout(String path, String page, CardEntry card) {
    String asset = "assets/" + card.asset() + ".html";
    return path.equals(asset)
        || page.contains("c/" + card.code() + "/index.html\"")
        || (path.startsWith("rooms/") && page.contains(asset + "\""))
        || (path.startsWith("answers/" + card.room() + "/") && !TO_A_CARD.matcher(page).find());
  }

  private String box(String path, String name, List<CardEntry> about) {
    if (about.isEmpty()) {
      return "";
    }
    PageContext here = site.at(path);
    List<RichLine> lines =
        about.stream()
            .map(
                card ->
                    (card.current() ? doubt(card, here) : why(card, here))
                        .then(TextPiece.of(" "))
                        .then(here.page(here.say("section.card-standing"), address(card))))
            .toList();
    return new String(
        templates.fill(new Box(here.frame(""), name, new Part.Box("", lines))).bytes(),
        StandardCharsets.UTF_8);
  }

  private static RichLine why(CardEntry card, PageContext here) {
    return PageContext.status(Mark.SQUARE, here.say("out-of-use.card", card.title()))
        .then(TextPiece.of(" " + here.say("check.why", card.reason())));
  }

  private RichLine doubt(CardEntry card, PageContext here) {
    String words = site.publication().editions().alarms().getOrDefault(card.name(), "");
    return PageContext.status(Mark.TRIANGLE, here.say("ask-first.card", card.title(), words));
  }

  private static String address(CardEntry card) {
    return RegisterPages.address(card);
  }

  /**
   * The notice alone.
   *
   * @param name by which it is found again
   */
  public record Box(PageFrame frame, String name, Part.Box mark) implements Page {
    @Override
    public String template() {
      return "out-of-use.ftlh";
    }
  }
}
