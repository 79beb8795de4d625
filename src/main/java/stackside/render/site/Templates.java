package stackside.render.site;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.StringTemplateLoader;
import freemarker.cache.TemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import stackside.render.OutputFile;

/**
 * Fills templates with page records. A misspelt name in a template ends the run: half a page is
 * worse than none.
 */
final class Templates {
  static final String FOLDER = "/templates/";

  private final OwnTemplates own;
  private final Configuration configuration;

  Templates(OwnTemplates own) {
    this.own = own;
    this.configuration = configuration(own);
  }

  private static Configuration configuration(OwnTemplates own) {
    Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
    StringTemplateLoader first = new StringTemplateLoader();
    own.templates().forEach(each -> first.putTemplate(each.name(), each.text(), 0));
    TemplateLoader second = new ClassTemplateLoader(Templates.class, FOLDER);
    configuration.setTemplateLoader(new MultiTemplateLoader(new TemplateLoader[] {first, second}));
    configuration.setDefaultEncoding(StandardCharsets.UTF_8.name());
    configuration.setOutputEncoding(StandardCharsets.UTF_8.name());
    configuration.setLocale(Locale.ROOT);
    configuration.setLocalizedLookup(false);
    configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setLogTemplateExceptions(false);
    configuration.setObjectWrapper(new PageObjects());
    return configuration;
  }

  /** Fills a template and returns the page as a file. */
  OutputFile fill(Page page) {
    try {
      StringWriter out = new StringWriter();
      configuration.getTemplate(page.template()).process(page, out);
      return OutputFile.text(page.frame().path(), out.toString());
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the template " + page.template(), e);
    } catch (TemplateException e) {
      throw new BrokenTemplate(page.template(), page.frame().path(), e);
    }
  }

  /**
   * The text of a file in the template folder that is not a template; the unit's own comes first.
   */
  String text(String name) {
    return own.text(name)
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
