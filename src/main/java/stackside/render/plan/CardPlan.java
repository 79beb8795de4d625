package stackside.render.plan;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.signed.Fingerprint;
import stackside.model.Asset;
import stackside.model.CardPart;
import stackside.model.Room;

/**
 * One face of the card for a room and a generator: its blocks in reading order.
 *
 * @param part which of the room's settings cards this is, if the unit has split them
 * @param code the end of the address on the card; it stays the same from edition to edition
 * @param address the short address printed on the card, to which its QR code leads
 * @param fingerprint of everything printed except the footer, which shows its first groups
 */
public record CardPlan(
    Room room,
    Asset asset,
    Face face,
    Optional<CardPart> part,
    String code,
    String address,
    Fingerprint fingerprint,
    List<Block> blocks) {

  public CardPlan {
    blocks = List.copyOf(blocks);
  }

  /** The path of the finished card in the site folder. */
  public String path() {
    return "cards/" + name() + ".pdf";
  }

  /** Room, asset, face and part in lower case with hyphens; unique among the cards. */
  public String name() {
    return nameOf(room, asset, face, part);
  }

  /** The content of the QR code: the address followed by the edition. */
  public String held() {
    return blocks(Block.Code.class).stream().map(Block.Code::held).findFirst().orElse(address);
  }

  /** The title as printed: face and part. */
  public String title() {
    return blocks(Block.Identity.class).stream()
        .findFirst()
        .map(identity -> identity.title().words())
        .orElseGet(face::word);
  }

  /** The blocks of one kind. */
  public <B extends Block> List<B> blocks(Class<B> kind) {
    return blocks.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /** Every phrase of the card, in reading order, except the words in drawings. */
  public Stream<Phrase> phrases() {
    return blocks.stream().flatMap(Block::phrases);
  }

  static String nameOf(Room room, Asset asset, Face face, Optional<CardPart> part) {
    String name =
        room.id().slug()
            + "-"
            + asset.id().slug()
            + "-"
            + face.word()
            + part.map(each -> "-" + each.name().value().replace(' ', '-')).orElse("");
    return name.toLowerCase(Locale.ROOT);
  }
}
