package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stackside.render.OutputFile;

/**
 * Every page of the demonstration in a browser: light and dark, wide and narrow, and printed. To
 * check only the pages whose path begins with certain words: {@code mvn -q test
 * -Dtest=EveryPageTest -Dpages=rooms}.
 */
@Tag("thorough")
final class EveryPageTest {
  private static final String SOME = System.getProperty("pages", "");

  @TempDir private static Path temporary;
  private static Path site;
  private static List<Browser> browsers = List.of();

  @BeforeAll
  static void openBrowsers() throws IOException {
    browsers = List.of(Browser.open(), Browser.open());
    browsers.forEach(PageVisit::prepare);
    site = Browser.write(temporary, DemonstrationSite.files());
  }

  @AfterAll
  static void closeBrowsers() {
    browsers.forEach(Browser::close);
  }

  @Test
  void noPageHasAFaultInAnyLook() {
    noneHasAFault(pages());
  }

  private static List<String> pages() {
    return DemonstrationSite.pages().stream()
        .map(OutputFile::path)
        .filter(path -> path.startsWith(SOME))
        .toList();
  }

  private static void noneHasAFault(List<String> pages) {
    assertThat(pages).isNotEmpty();
    Queue<String> waiting = new ConcurrentLinkedQueue<>(pages);
    Queue<String> visited = new ConcurrentLinkedQueue<>();
    List<String> found =
        browsers.parallelStream().flatMap(browser -> findings(browser, waiting, visited)).toList();
    assertThat(found.stream().sorted()).isEmpty();
    assertThat(visited).containsExactlyInAnyOrderElementsOf(pages);
  }

  /** The findings of one browser on the pages that it takes from those waiting. */
  private static Stream<String> findings(
      Browser browser, Queue<String> waiting, Queue<String> visited) {
    Stream.Builder<String> found = Stream.builder();
    for (String page = waiting.poll(); page != null; page = waiting.poll()) {
      PageVisit.findings(browser, site, page).forEach(found);
      visited.add(page);
    }
    browser.complaints().forEach(found);
    return found.build();
  }
}
