package stackside.derive.difference;

import stackside.model.Asset;
import stackside.model.Machine;
import stackside.model.Room;

/** A room, at one of its generators. */
public record RoomAtAsset(Room room, Asset asset) {

  public Machine machine() {
    return asset.machine().value();
  }

  /** Whether this is the same generator in the same room. */
  public boolean is(RoomAtAsset other) {
    return room.id().equals(other.room.id()) && asset.id().equals(other.asset.id());
  }

  /** Whether this is in the same hospital as the other. */
  boolean isNear(RoomAtAsset other) {
    return room.location().value().id().equals(other.room.location().value().id());
  }
}
