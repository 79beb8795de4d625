package stackside.render.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stackside.derive.difference.Difference;
import stackside.derive.difference.Differences;
import stackside.model.Condition;
import stackside.model.Fact;
import stackside.model.FootSwitch;
import stackside.model.Machine;
import stackside.model.Profile;
import stackside.model.Response;
import stackside.model.Socket;
import stackside.render.OutcomeWords;

/** Describes one difference between two rooms in one line: how it is there, and how it was here. */
final class DifferenceWords {
  private DifferenceWords() {}

  static Line of(Difference difference, Differences differences, Here here) {
    if (difference instanceof Difference.FaultComesToElse fault) {
      return fault(fault, here);
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
          .then(before(here, pedals(pedals.from(), here)));
    }
    if (difference instanceof Difference.ProgramMeansElse program) {
      return program(program, here);
    }
    if (difference instanceof Difference.AnsweredElsewise answered) {
      return answered(answered, here);
    }
    if (difference instanceof Difference.OtherSocket socket) {
      return here.link(socket.instrument()).then(Piece.of(" " + socket(socket, here)));
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
    if (difference instanceof Difference.OtherSetting setting) {
      return setting(setting, differences, here);
    }
    throw new IllegalStateException("a difference without words: " + difference);
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

  private static Piece before(Here here, String words) {
    return Piece.of(here.say("difference.before", words));
  }

  private static Line fault(Difference.FaultComesToElse fault, Here here) {
    return Line.of(here.say("fault." + fault.fault().word()) + ": ")
        .then(
            Here.status(
                OutcomeWords.mark(fault.to()), OutcomeWords.words(fault.to(), here.words())))
        .then(Piece.of(". "))
        .then(before(here, OutcomeWords.words(fault.from(), here.words())));
  }

  private static Line program(Difference.ProgramMeansElse program, Here here) {
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

  private static Line answered(Difference.AnsweredElsewise answered, Here here) {
    return changed(
        here,
        here.say("condition." + answered.condition().word())
            + ": "
            + response(answered.to(), answered.condition(), here)
            + ".",
        response(answered.from(), answered.condition(), here));
  }

  private static String socket(Difference.OtherSocket socket, Here here) {
    return here.say("difference.socket", labels(socket.to(), here), labels(socket.from(), here));
  }

  private static Line changed(Here here, String now, String before) {
    String bare = before.endsWith(".") ? before.substring(0, before.length() - 1) : before;
    return Line.of(now + " " + here.say("difference.before", bare));
  }

  private static String labels(List<Socket> sockets, Here here) {
    return here.words()
        .either(sockets.stream().map(socket -> socket.label().value()).distinct().toList());
  }

  private static String pedals(FootSwitch footSwitch, Here here) {
    return footSwitch.pedals().stream()
        .map(pedal -> here.choice(pedal.colour().value()) + " " + here.choice(pedal.does().value()))
        .collect(Collectors.joining(", "));
  }

  private static String response(Machine machine, Condition condition, Here here) {
    Optional<Response> answer = machine.answer(condition);
    if (answer.isEmpty()) {
      return here.say("unknown");
    }
    Response response = answer.get();
    List<String> words = new ArrayList<>();
    words.add(
        response
            .tone()
            .map(tone -> here.say("tone." + tone.value().word()))
            .orElse(here.say("heard.unknown")));
    FrontWords front = new FrontWords(machine, condition.unsaid(), here);
    words.addAll(front.lamps(FrontWords.colours(response)));
    words.add(front.display(response.display().map(Fact::value)));
    return String.join(", ", words);
  }
}
