package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stackside.render.OutputFile;

/**
 * Every page of the demonstration in a browser as a phone shows it. Of each folder one page in
 * eight in every other look besides: dark, wide, and printed. To check only the pages whose path
 * begins with certain words, and all of these in every look: {@code mvn -q test
 * -Dtest=EveryPageTest -Dpages=rooms}.
 */
@Tag("thorough")
final class EveryPageTest {
  private static final String SOME = System.getProperty("pages", "");
  private static final int ONE_IN = SOME.isEmpty() ? 8 : 1;

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
    Set<String> whole = inEveryLook(pages);
    List<String> found =
        browsers.parallelStream()
            .flatMap(browser -> findings(browser, whole, waiting, visited))
            .toList();
    assertThat(found.stream().sorted()).isEmpty();
    assertThat(visited).containsExactlyInAnyOrderElementsOf(pages);
  }

  /**
   * The first page of each folder and each eighth after it; at the top each is a kind of its own.
   */
  private static Set<String> inEveryLook(List<String> pages) {
    Set<String> whole = new TreeSet<>();
    Map<String, Integer> met = new TreeMap<>();
    for (String page : pages) {
      String folder = page.contains("/") ? page.substring(0, page.indexOf('/')) : page;
      if (met.merge(folder, 1, Integer::sum) % ONE_IN == 1 % ONE_IN) {
        whole.add(page);
      }
    }
    return whole;
  }

  /** The findings of one browser on the pages that it takes from those waiting. */
  private static Stream<String> findings(
      Browser browser, Set<String> whole, Queue<String> waiting, Queue<String> visited) {
    Stream.Builder<String> found = Stream.builder();
    for (String page = waiting.poll(); page != null; page = waiting.poll()) {
      List<String> faults =
          whole.contains(page)
              ? PageVisit.inEveryLook(browser, site, page)
              : PageVisit.onAPhone(browser, site, page);
      faults.forEach(found);
      visited.add(page);
    }
    browser.complaints().forEach(found);
    return found.build();
  }
}
