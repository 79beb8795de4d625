package stackside.render.plan;

import java.util.List;
import stackside.model.Asset;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.render.Drawing;
import stackside.render.PanelPlans;
import stackside.render.PanelStrip;
import stackside.render.PedalMap;
import stackside.render.PedalPlan;
import stackside.render.Publication;
import stackside.render.Sheet;

/**
 * The drawings of a room's generator at the size of the card: its front panel as plugged for the
 * answers of this card, and the foot switches that fit it. Their words use the near tier.
 */
final class MapsOfRoom {

  private static final double PANEL = 108;
  private static final double PEDALS = 78;

  private final Publication publication;
  private final double text;

  MapsOfRoom(Publication publication) {
    this.publication = publication;
    this.text =
        Sheet.millimetres(TypeScale.of(publication.unit().details().readingDistance()).near());
  }

  /** The drawings for a card with these answers. */
  Block of(Room room, Asset asset, List<Profile> answers) {
    Drawing sockets =
        PanelStrip.of(PanelPlans.in(publication, room, asset, answers), new Sheet(PANEL, text));
    List<Drawing> pedals =
        publication.unit().footSwitchesFor(room, asset.machine().value()).stream()
            .map(footSwitch -> PedalPlan.of(footSwitch, publication.words()))
            .map(plan -> PedalMap.bare(plan, new Sheet(PEDALS, text)))
            .toList();
    return new Block.Maps(sockets, pedals);
  }
}
