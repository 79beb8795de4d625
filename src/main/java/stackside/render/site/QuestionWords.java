package stackside.render.site;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stackside.derive.difference.RoomAtAsset;
import stackside.derive.question.Question;
import stackside.derive.question.Reply;
import stackside.derive.question.Subject;
import stackside.model.Contact;
import stackside.model.Machine;
import stackside.model.PedalColour;
import stackside.model.Settings;
import stackside.model.Term;
import stackside.render.Links;
import stackside.render.Numbers;
import stackside.render.OutcomeWords;
import stackside.render.PedalPlan;

/** Words for a question about a place, for its answers, and for where to read more. */
record QuestionWords(PageContext here) {

  /** The room, with the generator if there are several. */
  static String place(RoomAtAsset place) {
    return place.room().title()
        + (place.room().assets().size() > 1 ? ", " + place.machine().title() : "");
  }

  /** The question itself. */
  String asked(Question question) {
    String where = place(question.place());
    Subject subject = question.subject();
    if (subject instanceof Subject.SocketFor socket) {
      return here.say("asked.socket", where, Numbers.bind(socket.instrument().title()));
    }
    if (subject instanceof Subject.AnswerTo answer) {
      return here.say("asked.answer", where, answer(answer));
    }
    if (subject instanceof Subject.OnPedal pedal) {
      return here.say("asked.on-pedal", where, here.choice(pedal.colour()), answer(pedal.answer()));
    }
    if (subject instanceof Subject.PedalThat pedal) {
      return here.say("asked.pedal-" + pedal.action().word(), where);
    }
    if (subject instanceof Subject.FirstCheck check) {
      List<Machine> machine = List.of(question.place().machine());
      return here.say(
          "asked.first-check", where, DrillPages.sign(check.drill().sign(), machine, here));
    }
    if (subject instanceof Subject.WhatComesOf comes) {
      return here.say("asked.fault", where, here.say("fault." + comes.fault().word()));
    }
    if (subject instanceof Subject.Selection) {
      return here.say("asked.selection", where);
    }
    if (subject instanceof Subject.NeutralElectrode electrode) {
      return here.say(
          "asked.neutral-electrode",
          where,
          here.own(Term.NEUTRAL_ELECTRODE),
          electrode.patients().title(),
          electrode.patients().weight().value().text());
    }
    if (subject instanceof Subject.CallAt hour) {
      return here.say(
          "asked.call", where, here.say("day." + hour.day().getValue()), hour.time().toString());
    }
    if (subject instanceof Subject.CurrentCard card) {
      return here.say("asked.card", where, card.title());
    }
    throw new IllegalStateException("a question without words: " + subject);
  }

  private static String answer(Subject.AnswerTo answer) {
    return Numbers.bind(answer.lesion().title())
        + ", "
        + answer.site().title()
        + ", "
        + answer.step().title()
        + ", "
        + answer.patients().title();
  }

  /** An answer to choose from. */
  String reply(Reply reply) {
    if (reply instanceof Reply.SocketLabel socket) {
      return here.say("reply.socket", socket.label());
    }
    if (reply instanceof Reply.Set set) {
      return set.settings().program().isPresent()
          ? here.say("reply.program", Answers.program(set.settings(), here))
          : byHand(set.settings());
    }
    if (reply instanceof Reply.Cold) {
      return here.say("reply.cold");
    }
    if (reply instanceof Reply.NotApproved) {
      return here.say("reply.not-approved");
    }
    if (reply instanceof Reply.OnePedal pedal) {
      return String.join(", ", PedalPlan.words(pedal.use(), here.words()));
    }
    if (reply instanceof Reply.PedalAt pedal) {
      return pedal(pedal);
    }
    if (reply instanceof Reply.Check check) {
      return check.check().action().value();
    }
    if (reply instanceof Reply.Comes comes) {
      return OutcomeWords.words(comes.outcome(), here.words());
    }
    if (reply instanceof Reply.Selected selected) {
      return here.say("selects." + selected.kind().word()).replaceFirst("\\.$", "");
    }
    if (reply instanceof Reply.Plate plate) {
      return plate.electrode().title();
    }
    if (reply instanceof Reply.Call call) {
      return call.contact().title() + ", " + call.contact().phone().value();
    }
    if (reply instanceof Reply.Card card) {
      return here.say("reply.card", card.asset().title(), card.edition());
    }
    throw new IllegalStateException("an answer without words: " + reply);
  }

  private String byHand(Settings settings) {
    return here.say(
        "reply.by-hand",
        Stream.of(PedalColour.values())
            .map(
                colour ->
                    here.choice(colour)
                        + ": "
                        + String.join(", ", PedalPlan.words(settings, colour, here.words())))
            .collect(Collectors.joining("; ")));
  }

  private String pedal(Reply.PedalAt pedal) {
    String side =
        pedal.count() == 1
            ? "only"
            : pedal.number() == 1 ? "left" : pedal.number() == pedal.count() ? "right" : "middle";
    return here.say("pedals." + side) + ", " + here.choice(pedal.colour());
  }

  /** Where the right answer is documented, for further reading. */
  RichLine source(Question question) {
    RoomAtAsset place = question.place();
    Subject subject = question.subject();
    if (subject instanceof Subject.SocketFor || subject instanceof Subject.Selection) {
      return link(here.say("kind.machine"), place.machine().id());
    }
    if (subject instanceof Subject.AnswerTo answer) {
      return answer(place, answer);
    }
    if (subject instanceof Subject.OnPedal pedal) {
      return answer(place, pedal.answer());
    }
    if (subject instanceof Subject.FirstCheck check) {
      return here.linkWithKind(check.drill().id());
    }
    if (subject instanceof Subject.WhatComesOf) {
      return here.page(here.say("menu.failure-signs"), "failure-signs.html");
    }
    if (subject instanceof Subject.NeutralElectrode) {
      return here.linkWithKind(((Reply.Plate) question.right()).electrode().id());
    }
    if (subject instanceof Subject.CallAt) {
      Contact contact = ((Reply.Call) question.right()).contact();
      return RichLine.of(
          TextPiece.link(here.say("menu.contacts"), Links.to(contact.id()).from(here.path())));
    }
    if (subject instanceof Subject.CurrentCard) {
      return here.page(here.say("menu.cards"), "cards.html");
    }
    if (subject instanceof Subject.PedalThat) {
      return here.link(place.room());
    }
    throw new IllegalStateException("a question whose answer stands nowhere: " + subject);
  }

  private RichLine link(String kind, stackside.model.ThingId id) {
    return RichLine.of(TextPiece.quiet(kind + " ")).then(here.link(id));
  }

  private RichLine answer(RoomAtAsset place, Subject.AnswerTo answer) {
    return here.site().analysis().coverage().of(place.room(), place.asset()).stream()
        .filter(
            cell ->
                cell.lesion().id().equals(answer.lesion().id())
                    && cell.site().id().equals(answer.site().id())
                    && cell.step().id().equals(answer.step().id())
                    && cell.patients().id().equals(answer.patients().id()))
        .flatMap(cell -> Optional.of(cell.cover()).flatMap(cover -> cover.answer()).stream())
        .findFirst()
        .map(profile -> here.page(Answers.name(profile), Answers.page(place.room(), profile)))
        .orElseGet(() -> here.linkWithKind(place.room().id()));
  }

  /** The other choices, sorted by their words, so that their position gives nothing away. */
  List<String> choices(Question question) {
    return Stream.concat(
            Stream.of(question.right()), question.wrong().stream().map(Question.Elsewhere::reply))
        .map(this::reply)
        .sorted()
        .toList();
  }
}
