package stackside.derive.question;

import stackside.derive.difference.RoomAtAsset;

/**
 * A card in use at a place.
 *
 * @param title its face and part, as printed
 * @param edition as printed
 */
public record CardInUse(RoomAtAsset place, String title, String edition) {}
