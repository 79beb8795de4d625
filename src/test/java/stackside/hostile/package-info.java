/**
 * Throws broken and hostile content at the program. Start from {@link
 * stackside.hostile.HostileContentTest}.
 */
@NullMarked
package stackside.hostile;

import org.jspecify.annotations.NullMarked;
