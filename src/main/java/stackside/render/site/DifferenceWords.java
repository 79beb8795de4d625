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

  static RichLine of(Difference difference, Differences differences, PageContext here) {
    if (difference instanceof Difference.FaultOutcomeChanged fault) {
      return fault(fault, here);
    }
    if (difference instanceof Difference.SelectionChanged selected) {
      return changed(
          here,
          here.say("selects." + selected.to().word()),
          here.say("selects." + selected.from().word()));
    }
    if (difference instanceof Difference.MonitorChanged watched) {
      return changed(
          here,
          here.say("fact.monitor") + ": " + here.say("monitor." + watched.to().word()) + ".",
          here.say("monitor." + watched.from().word()));
    }
    if (difference instanceof Difference.OtherPedals pedals) {
      return here.link(pedals.to())
          .then(TextPiece.of(": " + pedals(pedals.to(), here) + ". "))
          .then(before(here, pedals(pedals.from(), here)));
    }
    if (difference instanceof Difference.ProgramMeaningChanged program) {
      return program(program, here);
    }
    if (difference instanceof Difference.ResponseChanged answered) {
      return answered(answered, here);
    }
    if (difference instanceof Difference.OtherSocket socket) {
      return here.link(socket.instrument()).then(TextPiece.of(" " + socket(socket, here)));
    }
    if (difference instanceof Difference.SparesElsewhere spares) {
      return changed(here, here.say("fact.spares-where") + ": " + spares.to() + ".", spares.from());
    }
    if (difference instanceof Difference.OtherContacts contacts) {
      return RichLine.of(here.say("menu.contacts") + ": ")
          .then(
              RichLine.joined(
                  contacts.to().contacts().stream().map(DrillPages::contact).toList(), "; "));
    }
    if (difference instanceof Difference.OtherSetting setting) {
      return setting(setting, differences, here);
    }
    throw new IllegalStateException("a difference without words: " + difference);
  }

  private static RichLine setting(Difference.OtherSetting setting, Differences differences, PageContext here) {
    return here.page(
            Answers.question(setting.to()), Answers.page(differences.to().room(), setting.to()))
        .then(
            TextPiece.of(
                " ("
                    + Answers.sites(setting.to())
                    + "): "
                    + brief(setting.to(), here)
                    + ". "
                    + here.say("difference.before", brief(setting.from(), here))));
  }

  private static String brief(Profile profile, PageContext here) {
    return Answers.summary(profile, here).stream()
        .flatMap(line -> line.pieces().stream())
        .map(TextPiece::text)
        .collect(Collectors.joining("; "));
  }

  private static TextPiece before(PageContext here, String words) {
    return TextPiece.of(here.say("difference.before", words));
  }

  private static RichLine fault(Difference.FaultOutcomeChanged fault, PageContext here) {
    return RichLine.of(here.say("fault." + fault.fault().word()) + ": ")
        .then(
            PageContext.status(
                OutcomeWords.mark(fault.to()), OutcomeWords.words(fault.to(), here.words())))
        .then(TextPiece.of(". "))
        .then(before(here, OutcomeWords.words(fault.from(), here.words())));
  }

  private static RichLine program(Difference.ProgramMeaningChanged program, PageContext here) {
    return RichLine.of(
        here.say(
            "difference.program",
            program.to().slot(),
            program.to().shownAs(),
            Answers.question(program.to().profiles().get(0)),
            program.from().slot(),
            program.from().shownAs(),
            Answers.question(program.from().profiles().get(0))));
  }

  private static RichLine answered(Difference.ResponseChanged answered, PageContext here) {
    return changed(
        here,
        here.say("condition." + answered.condition().word())
            + ": "
            + response(answered.to(), answered.condition(), here)
            + ".",
        response(answered.from(), answered.condition(), here));
  }

  private static String socket(Difference.OtherSocket socket, PageContext here) {
    return here.say("difference.socket", labels(socket.to(), here), labels(socket.from(), here));
  }

  private static RichLine changed(PageContext here, String now, String before) {
    String bare = before.endsWith(".") ? before.substring(0, before.length() - 1) : before;
    return RichLine.of(now + " " + here.say("difference.before", bare));
  }

  private static String labels(List<Socket> sockets, PageContext here) {
    return here.words()
        .either(sockets.stream().map(socket -> socket.label().value()).distinct().toList());
  }

  private static String pedals(FootSwitch footSwitch, PageContext here) {
    return footSwitch.pedals().stream()
        .map(pedal -> here.choice(pedal.colour().value()) + " " + here.choice(pedal.does().value()))
        .collect(Collectors.joining(", "));
  }

  private static String response(Machine machine, Condition condition, PageContext here) {
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
