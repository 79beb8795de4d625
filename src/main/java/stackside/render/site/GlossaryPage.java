package stackside.render.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import stackside.model.Fact;
import stackside.model.Instrument;
import stackside.model.Lesion;
import stackside.model.Term;
import stackside.model.Thing;
import stackside.render.site.Part.Grid;

/** The terms of the trade, and every alternative name of a thing in the unit. */
final class GlossaryPage implements Pages {
  private static final String TERM = "term.";

  @Override
  public Stream<Page> of(Site site) {
    Here here = site.at("glossary.html");
    return Stream.of(
        new PlainPage(
            here.frame(here.say("menu.glossary")),
            "plain",
            Optional.of(Line.of(here.say("glossary.lead"))),
            List.of(here.section("terms", terms(here)), here.section("names", names(here)))));
  }

  /** The message file has a sentence for each term; the unit's own word is shown beside it. */
  private static Grid terms(Here here) {
    TreeMap<String, Grid.Row> rows = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    here.words()
        .beginning(TERM)
        .forEach(
            (term, meaning) ->
                rows.put(
                    term,
                    new Grid.Row(
                        Optional.of("term-" + term),
                        Line.of(usual(term, here)),
                        List.of(Line.of(meaning), Line.of(own(term, here))))));
    return new Grid(
        here.say("section.terms"),
        List.of(here.say("column.term"), here.say("column.meaning"), here.say("column.own")),
        List.copyOf(rows.values()));
  }

  private static Optional<Term> known(String term) {
    return Stream.of(Term.values())
        .filter(each -> each.usual().replace(' ', '-').equals(term))
        .findFirst();
  }

  private static String usual(String term, Here here) {
    return here.say("word." + term);
  }

  private static String own(String term, Here here) {
    return known(term).map(here::own).orElseGet(() -> usual(term, here));
  }

  private static Part names(Here here) {
    List<Grid.Row> rows = new ArrayList<>();
    here.unit().sites().forEach(site -> rows.addAll(names(site, site.also(), here)));
    for (Lesion lesion : here.unit().lesions()) {
      rows.addAll(names(lesion, lesion.also(), here));
    }
    for (Instrument instrument : here.unit().instruments()) {
      rows.addAll(names(instrument, instrument.also(), here));
    }
    rows.sort(
        Comparator.comparing(row -> row.name().pieces().get(0).text().toLowerCase(Locale.ROOT)));
    return rows.isEmpty()
        ? new Part.Say(Line.of(here.say("none")))
        : new Grid(
            here.say("section.names"),
            List.of(here.say("column.name"), here.say("column.see")),
            rows);
  }

  private static List<Grid.Row> names(Thing thing, List<Fact<String>> also, Here here) {
    return also.stream().map(name -> Grid.Row.of(Line.of(name.value()), here.link(thing))).toList();
  }
}
