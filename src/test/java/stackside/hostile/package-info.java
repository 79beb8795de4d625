/**
 * Feeds broken and hostile content to the program. Start from {@link
 * stackside.hostile.HostileContentTest}.
 */
@NullMarked
package stackside.hostile;

import org.jspecify.annotations.NullMarked;
