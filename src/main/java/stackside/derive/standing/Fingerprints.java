package stackside.derive.standing;

import stackside.model.Thing;

/** Says what the signed facts of a thing come to today. */
@FunctionalInterface
public interface Fingerprints {
  String of(Thing thing);
}
