package stackside.render.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.coverage.Cell;
import stackside.derive.difference.Difference;
import stackside.derive.difference.Differences;
import stackside.derive.difference.Place;
import stackside.derive.difference.Rank;
import stackside.model.FootSwitch;
import stackside.model.Profile;
import stackside.model.Response;
import stackside.model.Socket;
import stackside.model.Tone;
import stackside.render.OutcomeWords;
import stackside.render.PanelChanges;
import stackside.render.PanelPlan;
import stackside.render.Sheet;
import stackside.render.SocketMap;
import stackside.render.SvgWriter;

/** What is different for hands that are used to another room, most dangerous first. */
final class DifferencePages implements Pages {

  @Override
  public Stream<Page> of(Site site) {
    return Stream.concat(
        Stream.of(index(site)),
        site.analysis().differences().stream().map(differences -> page(differences, site)));
  }

  private static String path(Place from, Place to) {
    return "differences/" + slug(from) + "/" + slug(to) + ".html";
  }

  private static String slug(Place place) {
    return place.room().id().slug() + "--" + place.asset().id().slug();
  }

  private static String name(Place place) {
    return place.room().title() + ", " + place.machine().title();
  }

  private static Page index(Site site) {
    Here here = site.at("differences.html");
    Map<String, List<Differences>> byFrom = new LinkedHashMap<>();
    site.analysis()
        .differences()
        .forEach(
            each -> byFrom.computeIfAbsent(slug(each.from()), any -> new ArrayList<>()).add(each));
    List<Section> sections = new ArrayList<>();
    byFrom.forEach(
        (slug, all) ->
            sections.add(
                new Section(
                    "from-" + slug,
                    here.say("differences.from", name(all.get(0).from())),
                    List.of(new Part.Lines(all.stream().map(each -> line(each, here)).toList())))));
    if (sections.isEmpty()) {
      sections.add(here.section("differences", new Part.Say(Line.of(here.say("differences.one")))));
    }
    return new PlainPage(
        here.frame(here.say("menu.differences")),
        "plain",
        Optional.of(Line.of(here.say("differences.lead"))),
        sections);
  }

  private static Line line(Differences differences, Here here) {
    long silent = differences.all().stream().filter(each -> each.rank() == Rank.SILENT).count();
    return here.page(
            here.say("differences.to", name(differences.to())),
            path(differences.from(), differences.to()))
        .then(Piece.quiet(" " + here.say("differences.count", differences.all().size(), silent)));
  }

  private static Page page(Differences differences, Site site) {
    Here here = site.at(path(differences.from(), differences.to()));
    List<Section> sections = new ArrayList<>();
    sections.add(
        here.section(
            "both-panels",
            new Part.Say(Line.of(here.say("differences.outlined"))),
            panels(differences, here)));
    for (Rank rank : Rank.values()) {
      List<Line> lines = lines(differences.ranked(rank), differences, here);
      sections.add(
          here.section(
              "rank-" + rank.word(),
              lines.isEmpty()
                  ? new Part.Say(Line.of(here.say("differences.none")))
                  : new Part.Lines(lines)));
    }
    return new PlainPage(
        here.frame(
            here.say("differences.title", name(differences.from()), name(differences.to())),
            here.page(here.say("menu.differences"), "differences.html"),
            here.link(differences.to().room())),
        "difference",
        Optional.of(
            here.page(here.say("differences.back"), path(differences.to(), differences.from()))),
        sections);
  }

  /** One line for each difference; those that say the same of several things share one. */
  private static List<Line> lines(List<Difference> some, Differences differences, Here here) {
    List<Line> lines = new ArrayList<>();
    Map<String, List<Difference.AnswerOfOtherKind>> answers = new LinkedHashMap<>();
    for (Difference difference : some) {
      if (difference instanceof Difference.AnswerOfOtherKind answer) {
        answers.computeIfAbsent(alike(answer, here), any -> new ArrayList<>()).add(answer);
      } else if (difference instanceof Difference.OtherSetting setting) {
        lines.add(setting(setting, differences, here));
      } else if (!(difference instanceof Difference.KeptInOneOnly)) {
        lines.add(words(difference, here));
      }
    }
    answers.values().forEach(each -> lines.add(answers(each, here)));
    kept(some, Difference.KeptInOneOnly.Side.TO, "difference.only-here", here)
        .ifPresent(lines::add);
    kept(some, Difference.KeptInOneOnly.Side.FROM, "difference.not-here", here)
        .ifPresent(lines::add);
    return lines;
  }

  private static String alike(Difference.AnswerOfOtherKind answer, Here here) {
    return answer.to().lesion().id()
        + " "
        + answer.to().step().id()
        + " "
        + answer.to().patients().id()
        + " "
        + status(answer.to(), here).pieces()
        + status(answer.from(), here).pieces();
  }

  private static Line status(Cell cell, Here here) {
    return Covers.status(cell.cover(), here);
  }

  private static Line answers(List<Difference.AnswerOfOtherKind> answers, Here here) {
    Cell to = answers.get(0).to();
    List<Line> sites = answers.stream().map(each -> here.link(each.to().site())).toList();
    return here.link(to.lesion())
        .then(Piece.of(", "))
        .then(here.link(to.step()))
        .then(Piece.of(" ("))
        .then(Line.joined(sites, ", "))
        .then(Piece.of("): "))
        .then(status(to, here))
        .then(
            Piece.of(
                ". "
                    + here.say(
                        "difference.before",
                        status(answers.get(0).from(), here).pieces().get(0).text())));
  }

  private static Line setting(Difference.OtherSetting setting, Differences differences, Here here) {
    return here.page(
            Answers.question(setting.to()), Answers.page(differences.to().room(), setting.to()))
        .then(
            Piece.of(
                " ("
                    + Answers.sites(setting.to())
                    + "): "
                    + brief(setting.to(), here)
                    + ". "
                    + here.say("difference.before", brief(setting.from(), here))));
  }

  private static String brief(Profile profile, Here here) {
    return Answers.summary(profile, here).stream()
        .flatMap(line -> line.pieces().stream())
        .map(Piece::text)
        .collect(Collectors.joining("; "));
  }

  private static Optional<Line> kept(
      List<Difference> some, Difference.KeptInOneOnly.Side side, String key, Here here) {
    List<Line> things =
        some.stream()
            .flatMap(
                each ->
                    each instanceof Difference.KeptInOneOnly kept && kept.side() == side
                        ? Stream.of(here.link(kept.accessory()))
                        : Stream.empty())
            .toList();
    return things.isEmpty()
        ? Optional.empty()
        : Optional.of(Line.of(here.say(key) + " ").then(Line.joined(things, ", ")));
  }

  private static Part panels(Differences differences, Here here) {
    Place from = differences.from();
    Place to = differences.to();
    PanelPlan old = here.site().panel(from.room(), from.asset());
    PanelPlan other = here.site().panel(to.room(), to.asset());
    return new Part.Pair(
        panel(from, PanelChanges.outlined(old, other), "from", here),
        panel(to, PanelChanges.outlined(other, old), "to", here));
  }

  private static Part.Side panel(Place place, PanelPlan plan, String id, Here here) {
    return new Part.Side(
        here.link(place.room())
            .then(Piece.of(", "))
            .then(here.link(place.machine()))
            .then(Piece.of(", "))
            .then(here.link(place.asset())),
        new Html(SvgWriter.svg(SocketMap.of(plan, Sheet.PHONE), id)));
  }

  private static Line words(Difference difference, Here here) {
    if (difference instanceof Difference.FaultComesToElse fault) {
      return Line.of(here.say("fault." + fault.fault().word()) + ": ")
          .then(
              Here.status(
                  OutcomeWords.mark(fault.to()), OutcomeWords.words(fault.to(), here.words())))
          .then(
              Piece.of(
                  ". "
                      + here.say(
                          "difference.before", OutcomeWords.words(fault.from(), here.words()))));
    }
    if (difference instanceof Difference.SelectedElsewise selected) {
      return changed(
          here,
          here.say("selects." + selected.to().word()),
          here.say("selects." + selected.from().word()));
    }
    if (difference instanceof Difference.WatchedElsewise watched) {
      return changed(
          here,
          here.say("fact.monitor") + ": " + here.say("monitor." + watched.to().word()) + ".",
          here.say("monitor." + watched.from().word()));
    }
    if (difference instanceof Difference.OtherPedals pedals) {
      return here.link(pedals.to())
          .then(Piece.of(": " + pedals(pedals.to(), here) + ". "))
          .then(Piece.of(here.say("difference.before", pedals(pedals.from(), here))));
    }
    if (difference instanceof Difference.ProgramMeansElse program) {
      return Line.of(
          here.say(
              "difference.program",
              program.to().slot(),
              program.to().shownAs(),
              Answers.question(program.to().profiles().get(0)),
              program.from().slot(),
              program.from().shownAs(),
              Answers.question(program.from().profiles().get(0))));
    }
    if (difference instanceof Difference.AnsweredElsewise answered) {
      return changed(
          here,
          here.say("condition." + answered.condition().word())
              + ": "
              + response(answered.to(), here)
              + ".",
          response(answered.from(), here));
    }
    if (difference instanceof Difference.OtherSocket socket) {
      return here.link(socket.instrument())
          .then(
              Piece.of(
                  " "
                      + here.say(
                          "difference.socket",
                          labels(socket.to(), here),
                          labels(socket.from(), here))));
    }
    if (difference instanceof Difference.SparesElsewhere spares) {
      return changed(here, here.say("fact.spares-where") + ": " + spares.to() + ".", spares.from());
    }
    if (difference instanceof Difference.OtherContacts contacts) {
      return Line.of(here.say("menu.contacts") + ": ")
          .then(
              Line.joined(
                  contacts.to().contacts().stream().map(DrillPages::contact).toList(), "; "));
    }
    throw new IllegalStateException("a difference without words: " + difference);
  }

  private static Line changed(Here here, String now, String before) {
    String bare = before.endsWith(".") ? before.substring(0, before.length() - 1) : before;
    return Line.of(now + " " + here.say("difference.before", bare));
  }

  private static String labels(List<Socket> sockets, Here here) {
    return sockets.stream()
        .map(socket -> socket.label().value())
        .distinct()
        .reduce((one, other) -> here.say("list.or", one, other))
        .orElse("");
  }

  private static String pedals(FootSwitch footSwitch, Here here) {
    return footSwitch.pedals().stream()
        .map(pedal -> here.choice(pedal.colour().value()) + " " + here.choice(pedal.does().value()))
        .collect(Collectors.joining(", "));
  }

  private static String response(Optional<Response> response, Here here) {
    if (response.isEmpty()) {
      return here.say("unknown");
    }
    List<String> words = new ArrayList<>();
    words.add(
        response.get().tone().map(tone -> tone(tone.value(), here)).orElse(here.say("unknown")));
    response
        .get()
        .lamps()
        .forEach((lamp, colour) -> words.add(lamp.slug().replace('-', ' ') + " " + colour.value()));
    response.get().display().ifPresent(shown -> words.add(here.say("sign.display", shown.value())));
    return String.join(", ", words);
  }

  private static String tone(Tone tone, Here here) {
    return here.say("tone." + tone.word());
  }
}
