package stackside.derive.question;

import stackside.derive.difference.Place;

/**
 * A card as it hangs at a place.
 *
 * @param title its face and part, as printed
 * @param edition as printed
 */
public record CardInUse(Place place, String title, String edition) {}
