package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.circuit.FailureSign;
import stackside.derive.circuit.Observation;
import stackside.model.Asset;
import stackside.model.Fact;
import stackside.model.Room;
import stackside.model.Unsaid;
import stackside.render.OutcomeWords;
import stackside.render.site.Part.Grid;

/** What fails silently and what does not, for each generator in each room, silent first. */
final class FailureSignPages implements Pages {

  /** The address of the failure signs of a generator in a room. */
  static String page(Room room, Asset asset) {
    return "failure-signs/" + room.id().slug() + "/" + asset.id().slug() + ".html";
  }

  @Override
  public Stream<Page> of(Website site) {
    return Stream.concat(
        Stream.of(index(site)),
        site.unit().rooms().stream()
            .flatMap(room -> room.assets().stream().map(asset -> page(room, asset.value(), site))));
  }

  private static Page index(Website site) {
    PageContext here = site.at("failure-signs.html");
    List<Grid.GridRow> rows = new ArrayList<>();
    for (Room room : site.unit().rooms()) {
      for (Fact<Asset> asset : room.assets()) {
        rows.add(row(room, asset.value(), here));
      }
    }
    return new PlainPage(
        here.frame(here.say("menu.failure-signs")),
        "plain",
        Optional.of(RichLine.of(here.say("failure-signs.lead"))),
        List.of(
            here.section(
                "failure-signs",
                new Grid(
                    here.say("section.failure-signs"),
                    List.of(
                        here.say("column.where"),
                        here.say("fact.machine"),
                        here.say("column.silent"),
                        here.say("column.others")),
                    rows))));
  }

  private static Grid.GridRow row(Room room, Asset asset, PageContext here) {
    List<FailureSign> signs = here.site().analysis().circuits().signsIn(room, asset);
    long silent = signs.stream().filter(sign -> sign.outcomeClass().silent()).count();
    return Grid.GridRow.of(
        here.page(here.say("failure-signs.where", room.title(), asset.title()), page(room, asset)),
        here.link(asset.machine().value()),
        RichLine.of(Long.toString(silent)),
        RichLine.of(Long.toString(signs.size() - silent)));
  }

  private static Page page(Room room, Asset asset, Website site) {
    PageContext here = site.at(page(room, asset));
    List<FailureSign> signs = site.analysis().circuits().signsIn(room, asset);
    String title = here.say("failure-signs.title", room.title(), asset.title());
    Part part =
        signs.isEmpty()
            ? new Part.Say(RichLine.of(here.say("failure-signs.none")))
            : new Grid(
                title,
                List.of(
                    here.say("column.fault"),
                    here.say("column.class"),
                    here.say("column.sign"),
                    here.say("column.reaches"),
                    here.say("column.guard"),
                    here.say("column.mends"),
                    here.say("column.evidence")),
                signs.stream().map(sign -> row(sign, here)).distinct().toList());
    return new PlainPage(
        here.frame(
            title,
            here.page(here.say("menu.failure-signs"), "failure-signs.html"),
            here.link(room)),
        "signs",
        Optional.of(RichLine.of(here.say("failure-signs.computed"))),
        List.of(here.section("signs", part)));
  }

  private static Grid.GridRow row(FailureSign sign, PageContext here) {
    List<RichLine> guards =
        sign.guards().stream()
            .map(guard -> here.link(guard.checklist(), guard.step().action().value()))
            .toList();
    List<RichLine> drills = sign.drills().stream().map(mending -> here.link(mending.drill())).toList();
    RichLine none = RichLine.of(here.say("none"));
    return Grid.GridRow.of(
        RichLine.of(here.say("fault." + sign.fault().word())),
        PageContext.status(
            OutcomeWords.mark(sign.outcomeClass()),
            OutcomeWords.words(sign.outcomeClass(), here.words())),
        RichLine.of(observed(sign, here)),
        RichLine.of(OutcomeWords.reaches(sign.reach(), here.words())),
        guards.isEmpty() ? none : RichLine.joined(guards, "; "),
        drills.isEmpty() ? none : RichLine.joined(drills, ", "),
        RichLine.of(
            sign.evidence()
                .map(basis -> here.choice(basis))
                .orElse(here.say("failure-signs.from-circuit"))));
  }

  private static String observed(FailureSign sign, PageContext here) {
    Observation observed = sign.observed();
    List<String> words = new ArrayList<>();
    words.add(OutcomeWords.heard(observed.tone(), sign.evidence(), here.words()));
    if (sign.condition().isPresent()) {
      Unsaid rest = observed.dark() ? Unsaid.DARK : Unsaid.NOT_KNOWN;
      FrontWords front = new FrontWords(sign.machine(), rest, here);
      List<String> lamps = front.lamps(observed.lamps());
      if (!lamps.isEmpty()) {
        words.add(String.join(", ", lamps));
      }
      words.add(front.display(observed.display()));
    }
    return String.join("; ", words);
  }
}
