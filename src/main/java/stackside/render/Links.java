package stackside.render;

import java.util.Optional;
import stackside.model.ThingId;

/**
 * Where each thing of the unit is in the site folder. All addresses within the site are relative,
 * so that it works from a server, a shared drive or a memory stick.
 */
public final class Links {

  private Links() {}

  /** A page in the site folder and, if the thing is part of a page, its anchor. */
  public record Address(String page, Optional<String> anchor) {

    static Address page(String page) {
      return new Address(page, Optional.empty());
    }

    /** The address as a link on the page {@code from}. */
    public String from(String from) {
      String place = anchor.map(name -> "#" + name).orElse("");
      return page.equals(from) && anchor.isPresent() ? place : relative(from, page) + place;
    }
  }

  /** Where to find a thing. */
  public static Address to(ThingId id) {
    return switch (id.kind()) {
      case LOCATION, CONTACT -> part("contacts.html", id);
      case ROLE, PATIENT_GROUP -> part("unit.html", id);
      case CITATION -> part("sources.html", id);
      case UNIT -> Address.page(id.slug().equals("sources") ? "sources.html" : "unit.html");
      case SOCKET -> part("socket-maps/" + owner(id) + ".html", id);
      case SITE_GROUP -> folder("site-groups", id);
      case MACHINE -> folder("machines", id);
      case MODE -> folder("modes", id);
      case ASSET -> folder("assets", id);
      case INSTRUMENT -> folder("instruments", id);
      case CABLE -> folder("cables", id);
      case ELECTRODE -> folder("electrodes", id);
      case FOOT_SWITCH -> folder("foot-switches", id);
      case SITE -> folder("sites", id);
      case STEP -> folder("steps", id);
      case LESION -> folder("lesions", id);
      case PROFILE -> folder("profiles", id);
      case CHECKLIST -> folder("checklists", id);
      case DRILL -> folder("drills", id);
      case ROOM -> folder("rooms", id);
      case PATH -> folder("paths", id);
      case HANDBOOK -> folder("handbook", id);
    };
  }

  /** The page of a rule or a reading fault. */
  public static Address toRule(String id) {
    return Address.page("rules/" + id + ".html");
  }

  /** The anchor of a thing on a page that it shares with others. */
  public static String anchor(ThingId id) {
    return id.kind().word() + "-" + id.local();
  }

  /** The link from one page to another, both given relative to the site folder. */
  public static String relative(String from, String to) {
    int shared = 0;
    for (int slash = from.indexOf('/'); slash >= 0; slash = from.indexOf('/', slash + 1)) {
      if (!to.startsWith(from.substring(0, slash + 1))) {
        break;
      }
      shared = slash + 1;
    }
    long up = from.substring(shared).chars().filter(letter -> letter == '/').count();
    return "../".repeat((int) up) + to.substring(shared);
  }

  private static Address folder(String folder, ThingId id) {
    return Address.page(folder + "/" + id.slug() + ".html");
  }

  private static Address part(String page, ThingId id) {
    return new Address(page, Optional.of(anchor(id)));
  }

  private static String owner(ThingId id) {
    int slash = id.slug().indexOf('/');
    return slash < 0 ? id.slug() : id.slug().substring(0, slash);
  }
}
