package stackside.check;

import static stackside.check.Rule.error;
import static stackside.check.Rule.warning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stackside.model.Fact;
import stackside.model.Kind;
import stackside.model.Lesion;
import stackside.model.Offer;
import stackside.model.Room;
import stackside.model.Site;
import stackside.model.SiteChoice;
import stackside.model.Unit;
import stackside.quantity.Band;
import stackside.quantity.Kilograms;
import stackside.quantity.Millimetres;
import stackside.quantity.UnreadableQuantity;

/** Sizes, weights and sites: each is covered once, and none is left out. */
final class LesionRules {

  private static final int FEWEST_NEIGHBOURS = 2;
  private static final Pattern SIZE_IN_NAME =
      Pattern.compile(
          "under \\d+(?:\\.\\d+)? [mc]m|\\d+(?:\\.\\d+)? [mc]m (?:and over|to \\d+(?:\\.\\d+)? [mc]m)");

  private LesionRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "size-classes-overlap",
            "two size classes of one shape and kind cover the same size",
            LesionRules::sizeClassesOverlap),
        error(
            "size-classes-leave-hole",
            "the size classes of one shape and kind leave a size out",
            LesionRules::sizeClassesLeaveHole),
        error(
            "patient-groups-overlap",
            "two patient groups cover the same weight",
            LesionRules::patientGroupsOverlap),
        error(
            "patient-groups-leave-hole",
            "a weight between two patient groups belongs to none",
            LesionRules::patientGroupsLeaveHole),
        error(
            "lesion-name-of-other-size",
            "a lesion's name gives a size that is not the lesion's",
            LesionRules::lesionNameOfOtherSize),
        warning(
            "site-in-no-group",
            "a site is in no group, but all others of its tract are",
            LesionRules::siteInNoGroup),
        warning(
            "site-named-twice", "a list names the same site twice", LesionRules::siteNamedTwice),
        warning(
            "lesion-offered-twice",
            "a room offers a lesion twice at the same site",
            LesionRules::lesionOfferedTwice));
  }

  private static List<Finding> sizeClassesOverlap(CheckedUnit checked) {
    return SizeClasses.of(checked.unit()).stream()
        .flatMap(classes -> classes.sizes().overlaps().stream())
        .map(LesionRules::sizeClassesOverlap)
        .toList();
  }

  private static Finding sizeClassesOverlap(Bands.Pair<Millimetres> pair) {
    return Finding.at(
            pair.upper().band().at(),
            "size %s overlaps with %s, which covers %s"
                .formatted(
                    pair.upper().band().value().text(),
                    Wording.quoted(pair.lower().thing()),
                    pair.lower().band().value().text()))
        .note(pair.lower().band().at(), "the other size")
        .help("start one class where the other ends; '10 mm to 20 mm' includes 10 but not 20");
  }

  private static List<Finding> sizeClassesLeaveHole(CheckedUnit checked) {
    if (!checked.unit().broken().isEmpty()) {
      return List.of();
    }
    List<Finding> found = new ArrayList<>();
    for (SizeClasses classes : SizeClasses.of(checked.unit())) {
      ends(classes, found);
      classes.sizes().holes().forEach(hole -> found.add(between(classes, hole)));
    }
    return found;
  }

  private static Finding between(SizeClasses classes, Bands.Pair<Millimetres> hole) {
    return sizeClassesLeaveHole(classes, hole.upper(), Bands.between(hole))
        .note(hole.lower().band().at(), "the class below");
  }

  private static void ends(SizeClasses classes, List<Finding> found) {
    List<Bands.Entry<Millimetres>> entries = classes.sizes().entries();
    Bands.Entry<Millimetres> lowest = entries.get(0);
    lowest
        .from()
        .filter(from -> from.value() > 0)
        .ifPresent(from -> found.add(sizeClassesLeaveHole(classes, lowest, "under " + from)));
    Bands.Entry<Millimetres> highest = entries.get(entries.size() - 1);
    if (entries.stream().allMatch(entry -> entry.below().isPresent())) {
      found.add(
          sizeClassesLeaveHole(classes, highest, highest.below().orElseThrow() + " and over"));
    }
  }

  private static Finding sizeClassesLeaveHole(
      SizeClasses classes, Bands.Entry<Millimetres> at, String leftOut) {
    return Finding.at(at.band().at(), "no class of %s covers %s".formatted(classes.what(), leftOut))
        .help("make the classes meet, or add a class for the missing sizes");
  }

  private static List<Finding> patientGroupsOverlap(CheckedUnit checked) {
    return weights(checked.unit()).overlaps().stream()
        .map(LesionRules::patientGroupsOverlap)
        .toList();
  }

  private static Finding patientGroupsOverlap(Bands.Pair<Kilograms> pair) {
    return Finding.at(
            pair.upper().band().at(),
            "weight %s overlaps with %s, which covers %s"
                .formatted(
                    pair.upper().band().value().text(),
                    Wording.quoted(pair.lower().thing()),
                    pair.lower().band().value().text()))
        .note(pair.lower().band().at(), "the other weight")
        .help("start one group where the other ends; '10 kg to 30 kg' includes 10 but not 30");
  }

  private static List<Finding> patientGroupsLeaveHole(CheckedUnit checked) {
    if (checked.unit().anyBroken(Kind.PATIENT_GROUP)) {
      return List.of();
    }
    return weights(checked.unit()).holes().stream()
        .map(LesionRules::patientGroupsLeaveHole)
        .toList();
  }

  private static Bands<Kilograms> weights(Unit unit) {
    return new Bands<>(
        unit.details().patients().stream()
            .map(group -> new Bands.Entry<>(group, group.weight()))
            .toList());
  }

  private static Finding patientGroupsLeaveHole(Bands.Pair<Kilograms> hole) {
    return Finding.at(hole.upper().band().at(), "no patient group covers " + Bands.between(hole))
        .note(hole.lower().band().at(), "the group below")
        .help("make the groups meet");
  }

  private static List<Finding> lesionNameOfOtherSize(CheckedUnit checked) {
    List<SizeClasses> classes = SizeClasses.of(checked.unit());
    return checked.unit().lesions().stream()
        .filter(lesion -> classes.stream().noneMatch(it -> it.doubts(lesion)))
        .filter(lesion -> lesion.size().filter(size -> saysOther(lesion, size.value())).isPresent())
        .map(
            lesion ->
                Finding.at(
                        lesion.name().at(),
                        "the name %s does not match the lesion's size, which is %s"
                            .formatted(
                                Wording.quoted(lesion), lesion.size().orElseThrow().value().text()))
                    .note(lesion.size().orElseThrow().at(), "its size")
                    .help("ask which of the two was decided, and correct the other"))
        .toList();
  }

  private static boolean saysOther(Lesion lesion, Band<Millimetres> size) {
    Matcher band = SIZE_IN_NAME.matcher(lesion.name().value());
    if (!band.find()) {
      return false;
    }
    try {
      Band<Millimetres> named = Band.parse(band.group(), Millimetres.MEASURE);
      return !(named.covers(size) && size.covers(named));
    } catch (UnreadableQuantity e) {
      return true; // a range that runs backwards is no lesion's size
    }
  }

  private static List<Finding> siteInNoGroup(CheckedUnit checked) {
    Unit unit = checked.unit();
    if (unit.anyBroken(Kind.SITE) || unit.anyBroken(Kind.SITE_GROUP)) {
      return List.of();
    }
    return unit.sites().stream()
        .filter(site -> !isInGroup(unit, site) && isNamed(unit, site))
        .filter(
            site -> {
              List<Site> others =
                  unit.sites().stream().filter(it -> isNeighbour(it, site)).toList();
              return others.size() >= FEWEST_NEIGHBOURS
                  && others.stream().allMatch(other -> isInGroup(unit, other));
            })
        .map(
            site ->
                Finding.at(
                        site.at(),
                        "%s is in no group, but every other site of its tract is"
                            .formatted(Wording.quoted(site)))
                    .help("add it to the groups that should hold it"))
        .toList();
  }

  /** A site that nothing names is reported by another rule. */
  private static boolean isNamed(Unit unit, Site site) {
    return unit.profiles().stream().anyMatch(profile -> profile.allSites().contains(site))
        || unit.rooms().stream()
            .flatMap(room -> room.offers().stream())
            .anyMatch(offer -> offer.allSites().contains(site));
  }

  private static boolean isNeighbour(Site other, Site site) {
    return !other.id().equals(site.id()) && other.tract().value() == site.tract().value();
  }

  private static boolean isInGroup(Unit unit, Site site) {
    return unit.siteGroups().stream().anyMatch(group -> group.sites().contains(site));
  }

  private static List<Finding> siteNamedTwice(CheckedUnit checked) {
    Unit unit = checked.unit();
    List<Finding> found = new ArrayList<>();
    unit.siteGroups().forEach(group -> siteNamedTwice(group.of(), found));
    unit.profiles().forEach(profile -> siteNamedTwice(profile.sites(), found));
    unit.rooms().stream()
        .flatMap(room -> room.offers().stream())
        .forEach(offer -> siteNamedTwice(offer.sites(), found));
    return found;
  }

  private static void siteNamedTwice(
      List<? extends Fact<? extends SiteChoice>> sites, List<Finding> found) {
    for (int i = 1; i < sites.size(); i++) {
      siteNamedTwice(sites.subList(0, i), sites.get(i), found);
    }
  }

  private static void siteNamedTwice(
      List<? extends Fact<? extends SiteChoice>> before,
      Fact<? extends SiteChoice> choice,
      List<Finding> found) {
    for (Site site : choice.value().sites()) {
      Optional<? extends Fact<? extends SiteChoice>> first =
          before.stream().filter(it -> it.value().sites().contains(site)).findFirst();
      if (first.isPresent()) {
        found.add(siteNamedTwice(choice, site, first.orElseThrow().value()));
        return;
      }
    }
  }

  private static Finding siteNamedTwice(
      Fact<? extends SiteChoice> again, Site site, SiteChoice first) {
    String where = first.id().equals(site.id()) ? "" : ", as part of " + Wording.quoted(first);
    return Finding.at(again.at(), Wording.quoted(site) + " is already in this list" + where)
        .help("keep one of the two; or was another site meant?");
  }

  private static List<Finding> lesionOfferedTwice(CheckedUnit checked) {
    List<Finding> found = new ArrayList<>();
    for (Room room : checked.unit().rooms()) {
      for (int i = 1; i < room.offers().size(); i++) {
        lesionOfferedTwice(room.offers().subList(0, i), room.offers().get(i), found);
      }
    }
    return found;
  }

  private static void lesionOfferedTwice(List<Offer> before, Offer offer, List<Finding> found) {
    for (Fact<Lesion> lesion : offer.lesions()) {
      before.stream()
          .filter(
              it -> it.lesions().stream().anyMatch(l -> l.value().id().equals(lesion.value().id())))
          .flatMap(it -> it.allSites().stream())
          .filter(offer.allSites()::contains)
          .findFirst()
          .ifPresent(
              site ->
                  found.add(
                      Finding.at(
                              lesion.at(),
                              "%s at %s is already offered further up"
                                  .formatted(Wording.quoted(lesion.value()), Wording.quoted(site)))
                          .help("keep one of the two; or was another lesion or site meant?")));
    }
  }

  /** Lesions of one shape and kind that have a size. Together they should cover each size once. */
  private record SizeClasses(String what, Bands<Millimetres> sizes) {
    /** Whether a lesion is one of these and they overlap or leave a size out. */
    boolean doubts(Lesion lesion) {
      List<Bands.Entry<Millimetres>> entries = sizes.entries();
      boolean fit =
          sizes.overlaps().isEmpty()
              && sizes.holes().isEmpty()
              && entries.get(0).from().filter(from -> from.value() > 0).isEmpty()
              && entries.stream().anyMatch(entry -> entry.below().isEmpty());
      return !fit && entries.stream().anyMatch(entry -> entry.thing().id().equals(lesion.id()));
    }

    /** All groups of sized lesions, in the order of the content. */
    static List<SizeClasses> of(Unit unit) {
      Map<String, List<Bands.Entry<Millimetres>>> groups = new LinkedHashMap<>();
      for (Lesion lesion : unit.lesions()) {
        lesion
            .size()
            .ifPresent(
                size ->
                    groups
                        .computeIfAbsent(words(lesion), words -> new ArrayList<>())
                        .add(new Bands.Entry<>(lesion, size)));
      }
      List<SizeClasses> all = new ArrayList<>();
      groups.forEach((words, entries) -> all.add(new SizeClasses(words, new Bands<>(entries))));
      return all;
    }

    private static String words(Lesion lesion) {
      String kind = lesion.kind().map(it -> it.value().spoken() + " ").orElse("");
      String shape = lesion.shape().map(it -> it.value().word() + " ").orElse("");
      return shape + kind + "lesions";
    }
  }
}
