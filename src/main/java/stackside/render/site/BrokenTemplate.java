package stackside.render.site;

import freemarker.core.InvalidReferenceException;
import freemarker.core.ParseException;
import freemarker.template.MalformedTemplateNameException;
import freemarker.template.TemplateException;
import freemarker.template.TemplateNotFoundException;
import java.io.IOException;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A template of the unit's own that cannot be filled. The message is a sentence with its place. */
public final class BrokenTemplate extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private static final Pattern STANDS =
      Pattern.compile("in template \"([^\"]+)\".*? at line (\\d+), column");
  private static final Pattern ADDRESS = Pattern.compile("freemarker[.\\w]+@[0-9a-f]+");
  private static final Pattern WHERE = Pattern.compile("\\s*\\[in template .*");

  private BrokenTemplate(String place, String words, @Nullable Throwable cause) {
    super(place + ": " + words + "; correct it, or remove it to take the program's own", cause);
  }

  private static String forPage(Page page, String words) {
    return "the template cannot be filled for " + page.frame().path() + ": " + words;
  }

  /** A template that is none. */
  static BrokenTemplate unread(String name, ParseException cause) {
    return new BrokenTemplate(
        named(name) + ":" + Math.max(1, cause.getLineNumber()), words(cause), cause);
  }

  /** A template in which so much stands inside each other that it cannot be read. */
  static BrokenTemplate nested(String name) {
    return new BrokenTemplate(
        named(name) + ":1", "it cannot be read as a template (nested too deep)", null);
  }

  /**
   * A template that did not come to a good end.
   *
   * @param steps where the filling stood, the innermost step first, in FreeMarker's words
   */
  static BrokenTemplate endless(Page page, String words, String steps, Set<String> own) {
    return new BrokenTemplate(
        place(steps, own).orElseGet(() -> named(page.template())), forPage(page, words), null);
  }

  /** Whatever came out of FreeMarker, told as what the author of the template did. */
  static BrokenTemplate because(Page page, Throwable cause, Set<String> own) {
    return new BrokenTemplate(place(page, cause, own), forPage(page, words(cause)), cause);
  }

  private static String place(Page page, Throwable cause, Set<String> own) {
    if (cause instanceof ParseException unread) {
      return named(unread.getTemplateName()) + ":" + Math.max(1, unread.getLineNumber());
    }
    Throwable inner = cause.getCause();
    if (inner instanceof ParseException unread) {
      return place(page, unread, own);
    }
    if (cause instanceof TemplateException failed) {
      return place(String.valueOf(failed.getFTLInstructionStack()), own)
          .orElseGet(() -> named(page.template()));
    }
    return named(page.template());
  }

  /** The innermost step that stands in a template of the unit's own. */
  private static Optional<String> place(String steps, Set<String> own) {
    return STANDS
        .matcher(steps)
        .results()
        .filter(step -> own.contains(step.group(1)))
        .findFirst()
        .map(BrokenTemplate::place);
  }

  private static String place(MatchResult step) {
    return named(step.group(1)) + ":" + step.group(2);
  }

  private static String named(@Nullable String template) {
    return "templates/" + String.valueOf(template).replaceFirst("->.*", "");
  }

  private static String words(Throwable cause) {
    Throwable inner = cause.getCause();
    if (inner instanceof ParseException unread) {
      return words(unread);
    }
    if (cause instanceof ParseException unread) {
      return "it cannot be read as a template (" + firstLine(unread.getEditorMessage()) + ")";
    }
    if (inner instanceof TemplateNotFoundException missing) {
      return "there is no template '" + missing.getTemplateName() + "'";
    }
    if (inner instanceof MalformedTemplateNameException malformed) {
      return "'" + malformed.getTemplateName() + "' is no name of a template";
    }
    if (cause instanceof InvalidReferenceException missing
        && missing.getBlamedExpressionString() != null) {
      return "there is nothing by the name '" + missing.getBlamedExpressionString() + "'";
    }
    if (cause instanceof TemplateException failed) {
      return firstLine(failed.getMessageWithoutStackTop());
    }
    return cause instanceof IOException
        ? firstLine(cause.getMessage())
        : "it does what no template may (" + firstLine(cause.toString()) + ")";
  }

  /** What FreeMarker says at length, without its hints and without the place. */
  private static String firstLine(@Nullable String message) {
    String line =
        String.valueOf(message)
            .lines()
            .map(String::strip)
            .filter(each -> !each.isEmpty())
            .findFirst()
            .orElse("nothing more is known");
    String bare = WHERE.matcher(line).replaceFirst("");
    return ADDRESS.matcher(bare).replaceAll(" ").replaceFirst("[.:]$", "");
  }
}
