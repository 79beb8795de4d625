package stackside.render.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.OutputType;
import stackside.render.card.Tool;

/**
 * The pictures in the README show the issued demonstration. {@code -Dpictures=write} makes them
 * anew from the files of {@code site/}: a card with pdftoppm, a page with Chromium.
 */
final class ReadmePicturesTest {
  private static final Path SITE = Path.of("site");
  private static final Path PICTURES = Path.of("src/pictures");
  private static final Pattern SHOWN =
      Pattern.compile("!\\[[^\\]]+]\\(src/pictures/([a-z-]+\\.png)\\)");
  private static final int CARD_WIDTH = 640;
  private static final int PAGE_WIDTH = 1000;
  private static final int PAGE_HEIGHT = 1100;

  private static final String CARD = "card.png";
  private static final String CARD_FROM = "cards/room-1-eq-0511-settings-stalks-and-bleeding.pdf";
  private static final String PAGE = "page.png";
  private static final String PAGE_FROM = "answers/room-1/sandwort-stalk-large.html";

  @TempDir private Path temporary;

  @Test
  void readmeShowsACardAndAPageOfTheIssuedSite() throws Exception {
    if ("write".equals(System.getProperty("pictures"))) {
      write();
    }
    String readme = Files.readString(Path.of("README.md"));
    List<String> shown = SHOWN.matcher(readme).results().map(found -> found.group(1)).toList();
    assertThat(shown).containsExactlyInAnyOrder(CARD, PAGE);
    assertThat(SITE.resolve(CARD_FROM)).exists();
    assertThat(SITE.resolve(PAGE_FROM)).exists();
    assertThat(picture(CARD).getWidth()).isEqualTo(CARD_WIDTH);
    assertThat(picture(PAGE).getWidth()).isEqualTo(PAGE_WIDTH);
  }

  private static BufferedImage picture(String name) throws IOException {
    return ImageIO.read(PICTURES.resolve(name).toFile());
  }

  private void write() throws IOException {
    Tool.named("pdftoppm")
        .run(
            temporary,
            "-png",
            "-singlefile",
            "-scale-to-x",
            Integer.toString(CARD_WIDTH),
            "-scale-to-y",
            "-1",
            SITE.resolve(CARD_FROM).toAbsolutePath().toString(),
            PICTURES.resolve(CARD).toAbsolutePath().toString().replaceAll("\\.png$", ""));
    try (Browser browser = Browser.open()) {
      browser.size(PAGE_WIDTH, PAGE_HEIGHT);
      browser.show(SITE.toAbsolutePath(), PAGE_FROM);
      Files.write(PICTURES.resolve(PAGE), browser.driver().getScreenshotAs(OutputType.BYTES));
    }
  }
}
