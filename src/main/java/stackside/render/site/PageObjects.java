package stackside.render.site;

import freemarker.core.HTMLOutputFormat;
import freemarker.ext.beans.ClassMemberAccessPolicy;
import freemarker.ext.beans.MemberAccessPolicy;
import freemarker.template.Configuration;
import freemarker.template.DefaultObjectWrapper;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Exposes page records to templates. An absent value is missing; finished HTML is not escaped. */
final class PageObjects extends DefaultObjectWrapper {

  PageObjects() {
    super(Configuration.VERSION_2_3_34);
    setMemberAccessPolicy(new OursAlone());
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

  /** Templates see what our own records show, and nothing of Java's classes. */
  private static final class OursAlone implements MemberAccessPolicy, ClassMemberAccessPolicy {
    private static final String OURS = "stackside.";

    @Override
    public ClassMemberAccessPolicy forClass(Class<?> type) {
      return this;
    }

    @Override
    public boolean isToStringAlwaysExposed() {
      return true;
    }

    @Override
    public boolean isMethodExposed(Method method) {
      return method.getDeclaringClass().getName().startsWith(OURS)
          && !Modifier.isStatic(method.getModifiers());
    }

    @Override
    public boolean isConstructorExposed(Constructor<?> constructor) {
      return false;
    }

    @Override
    public boolean isFieldExposed(Field field) {
      return false;
    }
  }
}
