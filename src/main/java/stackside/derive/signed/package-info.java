/**
 * What a signature covers: the signed facts of a thing as canonical JSON, their fingerprint, and
 * the ledger that fingerprints are signed in. Start from {@code SignedFacts}.
 *
 * <p>The form of JSON is that of RFC 8785. It is written here rather than by a library: the one on
 * Maven Central passes the vectors, but was last released in 2018, works from text to text only,
 * and turns half a surrogate pair into a question mark, so that two texts would share a
 * fingerprint.
 */
@NullMarked
package stackside.derive.signed;

import org.jspecify.annotations.NullMarked;
