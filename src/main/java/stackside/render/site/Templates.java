package stackside.render.site;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.StringTemplateLoader;
import freemarker.cache.StrongCacheStorage;
import freemarker.cache.TemplateLoader;
import freemarker.cache.TemplateNameFormat;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.core._CoreAPI;
import freemarker.template.Configuration;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stackside.model.Unit;
import stackside.render.OutputFile;

/**
 * Fills templates with page records. A misspelt name in a template ends the run: half a page is
 * worse than none. A template sees the page, the templates of the program and those of the unit,
 * and nothing else: no class, no file.
 */
final class Templates {
  static final String FOLDER = "/templates/";
  private static final String ENDING = ".ftlh";

  private final Map<String, String> own;
  private final Set<String> ownTemplates;
  private final Configuration configuration;

  Templates(Unit unit) {
    this.own = unit.templates();
    this.ownTemplates =
        own.keySet().stream().filter(name -> name.endsWith(ENDING)).collect(Collectors.toSet());
    this.configuration = configuration(own);
    ownTemplates.forEach(this::watch);
  }

  /** Reads a template of the unit's own in such a way that {@link Filling} can stop it. */
  private void watch(String name) {
    try {
      _CoreAPI.addThreadInterruptedChecks(configuration.getTemplate(name));
    } catch (ParseException e) {
      throw BrokenTemplate.unread(name, e);
    } catch (StackOverflowError e) {
      throw BrokenTemplate.nested(name);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the template " + name, e);
    }
  }

  private static Configuration configuration(Map<String, String> own) {
    Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
    configuration.setTemplateLoader(
        new MultiTemplateLoader(
            new TemplateLoader[] {loader(own), new ClassTemplateLoader(Templates.class, FOLDER)}));
    configuration.setCacheStorage(new StrongCacheStorage());
    configuration.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
    configuration.setTemplateNameFormat(TemplateNameFormat.DEFAULT_2_4_0);
    configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    configuration.setAPIBuiltinEnabled(false);
    configuration.setDefaultEncoding(StandardCharsets.UTF_8.name());
    configuration.setOutputEncoding(StandardCharsets.UTF_8.name());
    configuration.setLocale(Locale.ROOT);
    configuration.setLocalizedLookup(false);
    configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setLogTemplateExceptions(false);
    configuration.setAttemptExceptionReporter((failure, environment) -> {});
    configuration.setObjectWrapper(new PageObjects());
    return configuration;
  }

  private static TemplateLoader loader(Map<String, String> own) {
    StringTemplateLoader loader = new StringTemplateLoader();
    own.forEach((name, text) -> loader.putTemplate(name, text, 0));
    return loader;
  }

  /** Fills a template and returns the page as a file. */
  OutputFile fill(Page page) {
    return OutputFile.text(
        page.frame().path(), new Filling(configuration, page, ownTemplates).done());
  }

  /**
   * The text of a file in the template folder that is not a template; the unit's own comes first.
   */
  String text(String name) {
    return Optional.ofNullable(own.get(name))
        .orElseGet(() -> new String(resource(FOLDER + name), StandardCharsets.UTF_8));
  }

  static byte[] resource(String name) {
    try (InputStream stream = Templates.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks its file " + name);
      }
      return stream.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + name, e);
    }
  }
}
