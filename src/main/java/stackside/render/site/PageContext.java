package stackside.render.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.standing.SignatureStanding;
import stackside.model.Fact;
import stackside.model.Kind;
import stackside.model.Profile;
import stackside.model.Prose;
import stackside.model.Term;
import stackside.model.Thing;
import stackside.model.ThingId;
import stackside.model.Unit;
import stackside.model.UnitPart;
import stackside.model.Word;
import stackside.render.Dates;
import stackside.render.Drawing;
import stackside.render.Links;
import stackside.render.Mark;
import stackside.render.Numbers;
import stackside.render.Spans;
import stackside.render.SvgWriter;
import stackside.render.Words;
import stackside.render.site.PageFrame.Link;

/** The page that is being made: how to link from it, and the frame around it. */
record PageContext(Website site, String path) {

  Words words() {
    return site.words();
  }

  /** A choice from a closed list as it reads in a sentence. */
  String choice(Word choice) {
    return words().choice(choice);
  }

  /** Words for ranges. */
  Spans spans() {
    return new Spans(words());
  }

  String say(String key, Object... values) {
    return site.words().say(key, values);
  }

  Unit unit() {
    return site.unit();
  }

  // Links

  String to(String page) {
    return Links.relative(path, page);
  }

  /** The link to a thing, if the unit has it, whether whole or broken. */
  Optional<String> href(ThingId id) {
    return unit().find(id).map(thing -> Links.to(id).from(path));
  }

  /** The name of a thing, linked to its page. An answer is named by its question. */
  RichLine link(Thing thing) {
    return link(thing, name(thing));
  }

  private String name(Thing thing) {
    if (thing instanceof UnitPart part) {
      return say("unit-part." + part.id().slug());
    }
    return thing instanceof Profile profile ? Answers.name(profile) : thing.title();
  }

  /** These words, linked to the page of a thing. */
  RichLine link(Thing thing, String words) {
    return RichLine.of(TextPiece.link(Numbers.bind(words), Links.to(thing.id()).from(path)));
  }

  RichLine link(ThingId id) {
    return unit().find(id).map(this::link).orElseGet(() -> RichLine.of(id.slug()));
  }

  /** A thing preceded by its kind, for lists of different kinds. */
  RichLine linkWithKind(ThingId id) {
    return RichLine.of(TextPiece.quiet(kind(id.kind()) + " ")).then(link(id));
  }

  String kind(Kind kind) {
    return say("kind." + kind.word());
  }

  /** The usual term for a thing. */
  String usual(Term term) {
    return say("word." + term.usual().replace(' ', '-'));
  }

  /** The unit's own word for a thing, or the usual one. */
  String own(Term term) {
    Fact<String> own = unit().details().words().get(term);
    return own == null ? usual(term) : own.value();
  }

  /** The unit's own word for a thing, as a label. */
  String term(Term term) {
    String word = own(term);
    return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }

  <T extends Thing> List<RichLine> links(List<Fact<T>> facts) {
    return facts.stream().map(fact -> link(fact.value())).toList();
  }

  <T extends Thing> RichLine listed(List<Fact<T>> facts) {
    return RichLine.joined(links(facts), ", ");
  }

  RichLine page(String words, String page) {
    return RichLine.of(TextPiece.link(words, to(page)));
  }

  // Pieces of text

  static RichLine status(Mark mark, String words) {
    return RichLine.of(TextPiece.status(words, new Html(SvgWriter.mark(mark))));
  }

  Html prose(Prose prose) {
    return ProseHtml.of(prose, this, 2);
  }

  /** A drawing for wide and for narrow pages. */
  Part.Figure figure(String id, Drawing wide, Drawing narrow, Optional<Part.Grid> table) {
    return new Part.Figure(
        new Html(SvgWriter.svg(wide, id + "-wide")),
        new Html(SvgWriter.svg(narrow, id + "-narrow")),
        table);
  }

  String date(LocalDate day) {
    return Dates.day(day, words());
  }

  // Sections

  Section section(String id, Part... parts) {
    return new Section(id, say("section." + id), List.of(parts));
  }

  /** The pages that mention a thing; if there are none, the section says so. */
  Section mentions(ThingId id) {
    List<RichLine> lines =
        site.mentions().of(id).stream()
            .filter(other -> unit().find(other).isPresent())
            .map(this::linkWithKind)
            .toList();
    return section(
        "mentions",
        lines.isEmpty() ? new Part.Say(RichLine.of(say("mentions.none"))) : new Part.Lines(lines));
  }

  // The frame

  PageFrame frame(String title, RichLine... trail) {
    List<Link> way = new ArrayList<>();
    way.add(link(say("menu.start"), "index.html"));
    Stream.of(trail)
        .flatMap(line -> line.pieces().stream())
        .forEach(piece -> way.add(new Link(piece.text(), piece.href().orElse(""), "")));
    int folders = (int) path.chars().filter(letter -> letter == '/').count();
    return new PageFrame(
        path,
        "../".repeat(folders),
        title,
        "",
        unit().details().language().value(),
        unit().details().name().value(),
        to("index.html"),
        way,
        menu(),
        more(),
        marks(),
        Optional.of(link(say("menu.contacts"), "contacts.html")),
        Optional.empty(),
        say("frame.made", date(site.publication().on())),
        words());
  }

  /** The day by which a thing must be reviewed, once everyone has signed it. */
  Optional<PageFrame.Due> review(ThingId id) {
    return site.standing()
        .signaturesOf(id)
        .flatMap(SignatureStanding::reviewBy)
        .map(
            day ->
                new PageFrame.Due(
                    day.toString(),
                    say("review.by", date(day)),
                    say("review.overdue", date(day)),
                    site.publication().on().isAfter(day)));
  }

  private Link link(String words, String page) {
    return new Link(words, to(page), page.equals(path) ? "here" : "");
  }

  private List<Link> menu() {
    return Contents.MENU.stream().map(key -> link(say("menu." + key), key + ".html")).toList();
  }

  private List<Link> more() {
    return Contents.MORE.stream().map(key -> link(say("menu." + key), key + ".html")).toList();
  }

  private List<String> marks() {
    List<String> marks = new ArrayList<>();
    if (site.publication().draft()) {
      marks.add(say("mark.draft"));
    }
    if (site.publication().demonstration()) {
      marks.add(say("mark.demonstration"));
    }
    return marks;
  }
}
