package stackside.content;

import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Node;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * Parses Markdown. The parser's patterns call themselves again for each letter, for example of a
 * title in quotes. So a long text is parsed on a stack of its own that has room for the longest
 * page.
 */
final class MarkdownParser {
  private static final Parser PARSER =
      Parser.builder().extensions(List.of(TablesExtension.create())).build();

  private static final int SHORT = 400;
  private static final long DEEP_STACK = 256L * 1024 * 1024;

  private MarkdownParser() {}

  static Node parse(String text) {
    return text.length() <= SHORT ? PARSER.parse(text) : parseOnDeepStack(text);
  }

  private static Node parseOnDeepStack(String text) {
    FutureTask<Node> parsing = new FutureTask<>(() -> PARSER.parse(text));
    new Thread(null, parsing, "markdown", DEEP_STACK).start();
    try {
      return parsing.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while reading Markdown", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("Markdown could not be parsed", e.getCause());
    }
  }
}
