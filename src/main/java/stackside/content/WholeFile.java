package stackside.content;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A record for a whole file. One broken item does not break the others. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@interface WholeFile {}
