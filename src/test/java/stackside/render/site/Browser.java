package stackside.render.site;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/**
 * A browser for tests, which opens files from the disk. If no browser is installed, its tests are
 * skipped, but never in the CI run.
 */
final class Browser implements AutoCloseable {
  private static final File CHROMIUM = new File("/usr/bin/chromium");
  private static final File DRIVER = new File("/usr/bin/chromedriver");

  private final ChromeDriver driver;

  private Browser(ChromeDriver driver) {
    this.driver = driver;
  }

  static Browser open() {
    boolean installed = CHROMIUM.canExecute() && DRIVER.canExecute();
    if (!"true".equals(System.getenv("CI"))) {
      assumeTrue(installed, "no browser is installed");
    }
    ChromeOptions options = new ChromeOptions();
    options.setBinary(CHROMIUM);
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-dev-shm-usage",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--hide-scrollbars");
    LoggingPreferences logging = new LoggingPreferences();
    logging.enable(LogType.BROWSER, java.util.logging.Level.WARNING);
    options.setCapability(ChromeOptions.LOGGING_PREFS, logging);
    System.setProperty("webdriver.chrome.driver", DRIVER.getPath());
    return new Browser(new ChromeDriver(options));
  }

  ChromeDriver driver() {
    return driver;
  }

  void show(Path folder, String page) {
    driver.get(folder.resolve(page).toUri().toString());
  }

  void size(int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    driver.manage().window().setSize(new Dimension(Math.max(width, 500), height));
  }

  /** Sets how the page is shown from now on: its width, on screen or paper, light or dark. */
  void look(int width, String medium, String scheme) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", 900, "deviceScaleFactor", 1, "mobile", false));
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "media",
            medium,
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
  }

  /** What the browser itself reported as errors. */
  List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(entry -> entry.getMessage())
        .toList();
  }

  /** Writes files to a folder whose name contains a space and a non-ASCII letter. */
  static Path write(Path temporary, List<stackside.render.OutputFile> files) throws IOException {
    Path folder = temporary.resolve("The siteé");
    for (var file : files) {
      Path target = folder.resolve(file.path());
      Files.createDirectories(target.getParent());
      Files.write(target, file.bytes());
    }
    return folder;
  }

  @Override
  public void close() {
    driver.quit();
  }
}
