package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.model.Asset;
import stackside.model.Cold;
import stackside.model.Drill;
import stackside.model.Fact;
import stackside.model.HandbookPage;
import stackside.model.Instrument;
import stackside.model.Kind;
import stackside.model.Lesion;
import stackside.model.NotApproved;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.model.Term;
import stackside.model.Thing;
import stackside.render.Links;
import stackside.render.OutputFile;

/**
 * The search index: a line for every thing, with its other names. It is a classic script because a
 * page opened from a memory stick may not fetch files.
 */
final class SearchIndex {
  private static final String SYNONYMS = "synonym.";

  private final Website site;
  private final PageContext here;

  private SearchIndex(Website site) {
    this.site = site;
    this.here = site.at("search.html");
  }

  static OutputFile of(Website site) {
    return OutputFile.text("assets/search-index.js", new SearchIndex(site).script());
  }

  private String script() {
    String lines =
        Stream.concat(site.unit().things().map(this::line), pages())
            .collect(Collectors.joining(",\n"));
    String synonyms =
        here.words().beginning(SYNONYMS).values().stream()
            .map(
                group ->
                    Stream.of(group.split(",", -1))
                        .map(word -> json(word.strip().toLowerCase(Locale.ROOT)))
                        .collect(Collectors.joining(",", "[", "]")))
            .collect(Collectors.joining(",\n"));
    return "\"use strict\";\nwindow.stacksideIndex = [\n"
        + lines
        + "\n];\nwindow.stacksideSynonyms = [\n"
        + synonyms
        + "\n];\n";
  }

  /** The pages that are not about a single thing. */
  private Stream<String> pages() {
    return Stream.concat(Contents.MENU.stream(), Contents.MORE.stream())
        .map(key -> entry(here.say("menu." + key), "", key + ".html", "", 1));
  }

  private String line(Thing thing) {
    String title = thing instanceof Profile profile ? Answers.name(profile) : thing.title();
    return entry(
        title,
        here.kind(thing.id().kind()),
        Links.to(thing.id()).from("index.html"),
        String.join(" ", words(thing)),
        weight(thing.id().kind()));
  }

  /** What people need in a hurry ranks before what they read during induction. */
  private static int weight(Kind kind) {
    return switch (kind) {
      case DRILL -> 6;
      case ROOM, ASSET, MACHINE, SITE, LESION -> 3;
      case HANDBOOK -> 1;
      default -> 2;
    };
  }

  private static String entry(String title, String kind, String href, String words, int weight) {
    return "["
        + Stream.of(title, kind, href, words)
            .map(SearchIndex::json)
            .collect(Collectors.joining(","))
        + ","
        + weight
        + "]";
  }

  private List<String> words(Thing thing) {
    List<String> words = new ArrayList<>();
    words.add(thing.id().slug().replace('-', ' ').replace('/', ' '));
    term(thing.id().kind()).ifPresent(words::add);
    if (thing instanceof stackside.model.Site where) {
      also(where.also(), words);
    } else if (thing instanceof Lesion lesion) {
      also(lesion.also(), words);
    } else if (thing instanceof Instrument instrument) {
      also(instrument.also(), words);
    } else if (thing instanceof Asset asset) {
      words.add(asset.machine().value().title());
    } else if (thing instanceof Drill drill) {
      words.add(DrillPages.sign(drill, here));
      words.add(drill.makeSafe().value());
      drill.checks().forEach(check -> words.add(check.action().value()));
    } else if (thing instanceof HandbookPage page) {
      page.texts().forEach(text -> words.add(text.plain()));
    } else if (thing instanceof Profile profile) {
      profile(profile, words);
    }
    return words;
  }

  private void profile(Profile profile, List<String> words) {
    words.add(Answers.sites(profile));
    profile.allSites().forEach(where -> words.add(where.title()));
    if (profile.answer() instanceof Cold cold) {
      words.add(here.say("answer.cold.signed") + " " + cold.how().value());
    } else if (profile.answer() instanceof NotApproved not) {
      words.add(here.say("answer.not-approved") + " " + not.instead().value());
    } else if (profile.answer() instanceof Settings settings) {
      words.add(settings.instrument().value().title());
      words.add(Answers.program(settings, here));
    } else {
      throw new IllegalStateException("an answer without words: " + profile.answer());
    }
  }

  private static void also(List<Fact<String>> also, List<String> words) {
    also.forEach(name -> words.add(name.value()));
  }

  /** Things with several names can be found by the usual term and by the unit's own. */
  private Optional<String> term(Kind kind) {
    Optional<Term> term =
        Optional.ofNullable(
            Map.of(
                    Kind.MACHINE, Term.MACHINE,
                    Kind.ELECTRODE, Term.NEUTRAL_ELECTRODE,
                    Kind.FOOT_SWITCH, Term.FOOT_SWITCH,
                    Kind.SOCKET, Term.SOCKET)
                .get(kind));
    PageContext here = site.at("search.html");
    return term.map(each -> here.usual(each) + " " + here.own(each));
  }

  /** A text in double quotes, safe in a script file. */
  static String json(String text) {
    StringBuilder out = new StringBuilder("\"");
    for (int at = 0; at < text.length(); at++) {
      char letter = text.charAt(at);
      switch (letter) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\n' -> out.append(' ');
        case '<' -> out.append("\\u003c");
        case '\u2028' -> out.append("\\u2028");
        case '\u2029' -> out.append("\\u2029");
        default -> {
          if (letter < ' ') {
            out.append(' ');
          } else {
            out.append(letter);
          }
        }
      }
    }
    return out.append('"').toString();
  }
}
