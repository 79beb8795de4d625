/**
 * The unit as immutable records with a location on every fact. Start from {@link
 * stackside.model.Unit}. Structural references hold records and point in one direction (instrument,
 * machine → profile → room → unit). Links in prose hold ids. Reverse lookups are queries of {@link
 * stackside.model.Unit}. A thing whose text could not be read or linked is {@link
 * stackside.model.Broken}. Component names are the keys that authors write, in camel case. May
 * import {@code source} and {@code quantity}.
 */
@NullMarked
package stackside.model;

import org.jspecify.annotations.NullMarked;
