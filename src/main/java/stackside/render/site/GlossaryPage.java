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
import stackside.render.Words;
import stackside.render.site.Part.Grid;

/** The terms of the trade, and every alternative name of a thing in the unit. */
final class GlossaryPage implements Pages {
  private static final String TERM = "term.";

  @Override
  public Stream<Page> of(Website site) {
    PageContext here = site.at("glossary.html");
    return Stream.of(
        new PlainPage(
            here.frame(here.say("menu.glossary")),
            "plain",
            Optional.of(RichLine.of(here.say("glossary.lead"))),
            List.of(here.section("terms", terms(here)), here.section("names", names(here)))));
  }

  /** The message file has a sentence for each term; the unit's own word is shown beside it. */
  private static Grid terms(PageContext here) {
    TreeMap<String, Grid.GridRow> rows = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    here.words()
        .beginning(TERM)
        .forEach(
            (term, meaning) ->
                rows.put(
                    term,
                    new Grid.GridRow(
                        Optional.of("term-" + term),
                        RichLine.of(usual(term, here)),
                        List.of(RichLine.of(meaning), RichLine.of(own(term, here))))));
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

  /** The keys of all terms. */
  static List<String> terms(Words words) {
    return List.copyOf(words.beginning(TERM).keySet());
  }

  static String usual(String term, PageContext here) {
    return here.say("word." + term);
  }

  static String own(String term, PageContext here) {
    return known(term).map(here::own).orElseGet(() -> usual(term, here));
  }

  private static Part names(PageContext here) {
    List<Grid.GridRow> rows = new ArrayList<>();
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
        ? new Part.Say(RichLine.of(here.say("none")))
        : new Grid(
            here.say("section.names"),
            List.of(here.say("column.name"), here.say("column.see")),
            rows);
  }

  private static List<Grid.GridRow> names(Thing thing, List<Fact<String>> also, PageContext here) {
    return also.stream()
        .map(name -> Grid.GridRow.of(RichLine.of(name.value()), here.link(thing)))
        .toList();
  }
}
