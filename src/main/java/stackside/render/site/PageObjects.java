package stackside.render.site;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.DefaultObjectWrapper;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Exposes page records to templates. An absent value is missing; finished HTML is not escaped. */
final class PageObjects extends DefaultObjectWrapper {

  PageObjects() {
    super(Configuration.VERSION_2_3_34);
  }

  @Override
  public @Nullable TemplateModel wrap(@Nullable Object value) throws TemplateModelException {
    if (value instanceof Optional<?> optional) {
      return wrap(optional.orElse(null));
    }
    if (value instanceof Html html) {
      return HTMLOutputFormat.INSTANCE.fromMarkup(html.markup());
    }
    return super.wrap(value);
  }
}
