package stackside.render.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stackside.derive.coverage.Cell;
import stackside.derive.edition.Editions;
import stackside.derive.signed.Fingerprint;
import stackside.model.Asset;
import stackside.model.AssetStatus;
import stackside.model.CardPart;
import stackside.model.Fact;
import stackside.model.Profile;
import stackside.model.Room;
import stackside.render.Publication;

/**
 * Plans all cards of an edition: for each generator in each room, the settings face, in one or more
 * parts, and the set-up face. A quarantined generator has no card. A part has no card here if
 * another generator of the room alone answers all of it.
 */
public final class CardPlanner {

  private final Publication publication;
  private final CardWords words;

  private CardPlanner(Publication publication) {
    this.publication = publication;
    this.words = new CardWords(publication);
  }

  /** The plans, ordered by room and asset, settings before set-up. */
  public static List<CardPlan> plans(Publication publication) {
    return new CardPlanner(publication).plans();
  }

  private List<CardPlan> plans() {
    List<CardPlan> plans = new ArrayList<>();
    Set<String> codes = new LinkedHashSet<>();
    for (Room room : publication.unit().rooms()) {
      for (Fact<Asset> asset : room.assets()) {
        if (asset.value().status().value() != AssetStatus.QUARANTINED) {
          faces(room, asset.value(), codes, plans);
        }
      }
    }
    return List.copyOf(plans);
  }

  private void faces(Room room, Asset asset, Set<String> codes, List<CardPlan> plans) {
    if (room.cards().isEmpty()) {
      plans.add(plan(room, asset, Face.SETTINGS, Optional.empty(), codes));
    }
    room.cards().stream()
        .map(Optional::of)
        .filter(part -> answersHere(room, asset, part))
        .forEach(part -> plans.add(plan(room, asset, Face.SETTINGS, part, codes)));
    plans.add(plan(room, asset, Face.SET_UP, Optional.empty(), codes));
  }

  private CardPlan plan(
      Room room, Asset asset, Face face, Optional<CardPart> part, Set<String> codes) {
    String code = CardCode.of(CardPlan.nameOf(room, asset, face, part), codes);
    codes.add(code);
    String address = address(code);
    List<Block> body = body(room, asset, face, part);
    Fingerprint fingerprint = CardDigest.of(body);
    List<Block> blocks = new ArrayList<>(body);
    Editions.Edition edition =
        publication.editions().of(CardPlan.nameOf(room, asset, face, part), publication.on());
    blocks.add(words.footer(room, edition, fingerprint.shortText()));
    blocks.add(
        words.code(room, address, address + "#" + edition.words() + "-" + fingerprint.mark()));
    return new CardPlan(room, asset, face, part, code, address, fingerprint, blocks);
  }

  /** The unit's own address followed by the code; the site has a folder with that name. */
  private String address(String code) {
    String base = publication.unit().details().address().value().toString();
    return (base.endsWith("/") ? base : base + "/") + "c/" + code;
  }

  private List<Block> body(Room room, Asset asset, Face face, Optional<CardPart> part) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(words.identity(room, asset, face, part));
    words.marks(room).ifPresent(blocks::add);
    words.makeSafe().ifPresent(blocks::add);
    switch (face) {
      case SETTINGS -> {
        blocks.add(words.maps(room, asset, profiles(room, asset, part)));
        blocks.add(words.answers(room, rows(room, asset, part)));
      }
      case SET_UP -> {
        blocks.add(words.setUp(room, asset));
        blocks.addAll(words.drills(room, asset));
      }
    }
    blocks.add(words.contacts(room));
    return blocks;
  }

  /** Whether a part has any row that is not answered by another generator of the room alone. */
  private boolean answersHere(Room room, Asset asset, Optional<CardPart> part) {
    return rows(room, asset, part).rows().stream().anyMatch(row -> !row.elsewhere());
  }

  private AnswerRows rows(Room room, Asset asset, Optional<CardPart> part) {
    return new AnswerRows(
        publication.unit(),
        publication.analysis().coverage(),
        publication.words(),
        cells(room, asset, part));
  }

  /** The answers on a card, each once. */
  private List<Profile> profiles(Room room, Asset asset, Optional<CardPart> part) {
    return cells(room, asset, part).stream()
        .map(Cell::cover)
        .flatMap(cover -> Stream.concat(cover.preferred().stream(), cover.alternatives().stream()))
        .distinct()
        .toList();
  }

  private List<Cell> cells(Room room, Asset asset, Optional<CardPart> part) {
    return publication.analysis().coverage().of(room, asset).stream()
        .filter(cell -> part.map(each -> each.holds(cell.lesion(), cell.site())).orElse(true))
        .toList();
  }
}
