package stackside.derive.question;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import stackside.derive.Analysis;
import stackside.derive.circuit.FaultOutcome;
import stackside.derive.circuit.OutcomeClass;
import stackside.derive.difference.RoomAtAsset;
import stackside.model.AppliesTo;
import stackside.model.Contact;
import stackside.model.ContactHours;
import stackside.model.Drill;
import stackside.model.DrillCheck;
import stackside.model.Electrode;
import stackside.model.FootSwitch;
import stackside.model.PatientGroup;
import stackside.model.Pedal;
import stackside.model.PedalSetting;
import stackside.model.PedalUse;
import stackside.model.Profile;
import stackside.model.Settings;
import stackside.model.Sign;
import stackside.model.SingleFault;
import stackside.model.Socket;
import stackside.model.SocketKind;
import stackside.model.ThingId;
import stackside.model.Unit;

/**
 * Finds out whether an answer would be right in a place by trying everything in the model. It
 * shares no code with the questions: it walks through all profiles, drills, contacts and minutes.
 */
final class Truth {
  private static final int WEEK = 7 * 24 * 60;

  private final Unit unit;
  private final List<FaultOutcome> outcomes;
  private final List<CardInUse> cards;

  Truth(Analysis analysis, List<CardInUse> cards) {
    this.unit = analysis.unit();
    this.outcomes = analysis.circuits().outcomes();
    this.cards = cards;
  }

  /** Whether the answer could be called right there. */
  boolean isRight(RoomAtAsset place, Subject subject, Reply reply) {
    if (subject instanceof Subject.SocketFor asked && reply instanceof Reply.SocketLabel label) {
      return labels(place, asked.instrument().id())
          .contains(label.label().toLowerCase(Locale.ROOT));
    }
    if (subject instanceof Subject.AnswerTo asked) {
      return matching(place, asked).stream().anyMatch(profile -> says(profile, reply));
    }
    if (subject instanceof Subject.OnPedal asked && reply instanceof Reply.OnePedal pedal) {
      return matching(place, asked.answer()).stream()
          .flatMap(profile -> profile.settings().stream())
          .anyMatch(settings -> same(colour(settings, asked.colour().name()), pedal.use()));
    }
    if (subject instanceof Subject.PedalThat asked && reply instanceof Reply.PedalAt pedal) {
      return pedals(place, asked.action().name())
          .contains(pedal.colour().name() + pedal.number() + "/" + pedal.count());
    }
    if (subject instanceof Subject.FirstCheck asked && reply instanceof Reply.Check check) {
      return drills(place).stream()
          .filter(drill -> !contradict(drill.sign(), asked.drill().sign()))
          .anyMatch(drill -> alike(drill.checks().get(0), check.check()));
    }
    if (subject instanceof Subject.WhatComesOf asked && reply instanceof Reply.Comes comes) {
      return outcomes(place, asked.fault()).contains(comes.outcome());
    }
    if (subject instanceof Subject.Selection && reply instanceof Reply.Selected selected) {
      return place.machine().selectsSocket().value() == selected.kind();
    }
    if (subject instanceof Subject.NeutralElectrode asked && reply instanceof Reply.Plate plate) {
      return prescribed(place, asked.patients()).contains(plate.electrode().id())
          || wouldFit(place, asked.patients(), plate.electrode());
    }
    if (subject instanceof Subject.CallAt hour && reply instanceof Reply.Call call) {
      return phones(place, hour.day(), hour.time()).contains(phone(call.contact()));
    }
    if (subject instanceof Subject.CurrentCard && reply instanceof Reply.Card card) {
      return card.asset().id().equals(place.asset().id());
    }
    throw new AssertionError(reply + " is no answer to " + subject);
  }

  /**
   * Whether somebody from the other place would give this answer to this question or a similar one.
   */
  boolean comesFrom(RoomAtAsset other, Subject subject, Reply reply) {
    if (subject instanceof Subject.FirstCheck && reply instanceof Reply.Check check) {
      return drills(other).stream()
          .anyMatch(drill -> drill.checks().get(0).action().value().equals(text(check.check())));
    }
    if (subject instanceof Subject.CallAt && reply instanceof Reply.Call call) {
      return other.room().location().value().contacts().contains(call.contact());
    }
    if (subject instanceof Subject.NeutralElectrode && reply instanceof Reply.Plate plate) {
      return other.room().patients().stream()
          .anyMatch(group -> prescribed(other, group.value()).contains(plate.electrode().id()));
    }
    if (subject instanceof Subject.CurrentCard && reply instanceof Reply.Card card) {
      return cards.stream()
          .anyMatch(
              hung ->
                  hung.place().is(other)
                      && hung.edition().equals(card.edition())
                      && hung.place().asset().id().equals(card.asset().id()));
    }
    return isRight(other, subject, reply);
  }

  // Answers

  private List<Profile> serving(RoomAtAsset place) {
    List<Profile> serving = new ArrayList<>();
    for (Profile profile : unit.profiles()) {
      if (profile.machine().value().id().equals(place.machine().id()) && isServed(profile, place)) {
        serving.add(profile);
      }
    }
    return serving;
  }

  private boolean isServed(Profile profile, RoomAtAsset place) {
    return place.room().offers().stream()
        .anyMatch(
            offer ->
                offer.lesions().stream().anyMatch(l -> hasLesion(profile, l.value().id()))
                    && offer.allSites().stream().anyMatch(site -> hasSite(profile, site.id()))
                    && place.room().patients().stream()
                        .anyMatch(group -> hasPatients(profile, group.value().id())));
  }

  private static boolean hasLesion(Profile profile, ThingId id) {
    return profile.lesions().stream().anyMatch(fact -> fact.value().id().equals(id));
  }

  private static boolean hasSite(Profile profile, ThingId id) {
    return profile.sites().stream()
        .flatMap(choice -> choice.value().sites().stream())
        .anyMatch(site -> site.id().equals(id));
  }

  private static boolean hasPatients(Profile profile, ThingId id) {
    return profile.patients().isEmpty()
        || profile.patients().stream().anyMatch(fact -> fact.value().id().equals(id));
  }

  private List<Profile> matching(RoomAtAsset place, Subject.AnswerTo asked) {
    return serving(place).stream()
        .filter(profile -> hasLesion(profile, asked.lesion().id()))
        .filter(profile -> hasSite(profile, asked.site().id()))
        .filter(profile -> profile.step().value().id().equals(asked.step().id()))
        .filter(profile -> hasPatients(profile, asked.patients().id()))
        .toList();
  }

  private static boolean says(Profile profile, Reply reply) {
    if (reply instanceof Reply.Cold) {
      return profile.cold().isPresent();
    }
    if (reply instanceof Reply.NotApproved) {
      return profile.notApproved().isPresent();
    }
    return reply instanceof Reply.Set set
        && profile
            .settings()
            .filter(
                settings ->
                    program(settings)
                            .filter(program(set.settings()).orElse("?")::equals)
                            .isPresent()
                        || (same(settings.yellow(), set.settings().yellow())
                            && same(settings.blue(), set.settings().blue())))
            .isPresent();
  }

  private static Optional<String> program(Settings settings) {
    return settings.program().map(it -> it.slot().value() + " " + it.shownAs().value());
  }

  private static PedalUse colour(Settings settings, String name) {
    return name.equals("YELLOW") ? settings.yellow() : settings.blue();
  }

  private static boolean same(PedalUse one, PedalUse other) {
    if (one.setting().isEmpty() || other.setting().isEmpty()) {
      return one.setting().isEmpty() && other.setting().isEmpty();
    }
    PedalSetting here = one.setting().get();
    PedalSetting there = other.setting().get();
    boolean numbers =
        here.level()
                .map(fact -> fact.value().text())
                .equals(there.level().map(f -> f.value().text()))
            && here.limit().map(fact -> fact.value()).equals(there.limit().map(f -> f.value()));
    boolean name =
        here.mode()
            .value()
            .title()
            .toLowerCase(Locale.ROOT)
            .equals(there.mode().value().title().toLowerCase(Locale.ROOT));
    boolean current =
        here.mode().value().current().value() == there.mode().value().current().value();
    return numbers && (name || current);
  }

  // Sockets and faults

  private Set<String> labels(RoomAtAsset place, ThingId instrument) {
    Set<String> labels = new TreeSet<>();
    for (Profile profile : serving(place)) {
      if (profile
          .settings()
          .filter(it -> it.instrument().value().id().equals(instrument))
          .isPresent()) {
        labels.add(label(profile.settings().get().socket().value()));
        for (FaultOutcome outcome : outcomes) {
          if (outcome.room().id().equals(place.room().id())
              && outcome.profile().id().equals(profile.id())
              && outcome.fault() == SingleFault.INSTRUMENT_IN_WRONG_SOCKET
              && outcome.outcomeClass() == OutcomeClass.RIGHT) {
            outcome.deviation().socket().ifPresent(socket -> labels.add(label(socket)));
          }
        }
      }
    }
    return labels;
  }

  private static String label(Socket socket) {
    return socket.label().value().toLowerCase(Locale.ROOT);
  }

  /** Considers every single outcome of every answer there, without summarising. */
  private Set<OutcomeClass> outcomes(RoomAtAsset place, SingleFault fault) {
    Set<OutcomeClass> classes = new TreeSet<>();
    for (FaultOutcome outcome : outcomes) {
      if (outcome.room().id().equals(place.room().id())
          && outcome.asset().id().equals(place.asset().id())
          && outcome.fault() == fault) {
        outcome.presses().forEach(press -> classes.add(press.outcomeClass()));
      }
    }
    classes.remove(OutcomeClass.RIGHT);
    return classes;
  }

  // Pedals

  private List<String> pedals(RoomAtAsset place, String action) {
    List<String> found = new ArrayList<>();
    for (var kept : place.room().footSwitches()) {
      boolean taken =
          place.machine().footSwitches().stream()
              .anyMatch(fact -> fact.value().id().equals(kept.value().id()));
      FootSwitch footSwitch = kept.value();
      for (Pedal pedal : footSwitch.pedals()) {
        if (taken && pedal.does().value().name().equals(action)) {
          found.add(
              pedal.colour().value().name()
                  + (footSwitch.pedals().indexOf(pedal) + 1)
                  + "/"
                  + footSwitch.pedals().size());
        }
      }
    }
    return found;
  }

  // Drills

  private List<Drill> drills(RoomAtAsset place) {
    return unit.drills().stream().filter(drill -> holds(drill.appliesTo(), place)).toList();
  }

  private static boolean holds(AppliesTo appliesTo, RoomAtAsset place) {
    return appliesTo.machines().isEmpty()
        || appliesTo.machines().stream()
            .anyMatch(fact -> fact.value().id().equals(place.machine().id()));
  }

  private static boolean contradict(Sign one, Sign other) {
    boolean tone =
        one.tone().isPresent()
            && other.tone().isPresent()
            && one.tone().get().value() != other.tone().get().value();
    boolean display =
        one.display().isPresent()
            && other.display().isPresent()
            && !one.display().get().value().equals(other.display().get().value());
    boolean tissue =
        one.tissue().isPresent()
            && other.tissue().isPresent()
            && !one.tissue().get().value().equals(other.tissue().get().value());
    boolean lamps =
        one.lamps().keySet().stream()
            .filter(other.lamps()::containsKey)
            .anyMatch(
                lamp -> !one.lamps().get(lamp).value().equals(other.lamps().get(lamp).value()));
    return tone || display || tissue || lamps;
  }

  /** Whether doing one check amounts to doing the other. */
  private static boolean alike(DrillCheck one, DrillCheck other) {
    return text(one).equalsIgnoreCase(text(other))
        || one.mends().stream()
            .anyMatch(
                fault ->
                    other.mends().stream().anyMatch(mended -> mended.value() == fault.value()));
  }

  private static String text(DrillCheck check) {
    return check.action().value();
  }

  // Neutral electrodes

  private List<ThingId> prescribed(RoomAtAsset place, PatientGroup patients) {
    return serving(place).stream()
        .filter(profile -> hasPatients(profile, patients.id()))
        .flatMap(profile -> profile.settings().stream())
        .flatMap(settings -> settings.neutralElectrode().stream())
        .map(fact -> fact.value().id())
        .toList();
  }

  /** Whether it plugs in directly or through one cable of the room, and suits such patients. */
  private static boolean wouldFit(RoomAtAsset place, PatientGroup patients, Electrode electrode) {
    boolean weight = electrode.patients().value().overlaps(patients.weight().value());
    boolean goesIn =
        place.machine().sockets().stream()
            .filter(socket -> socket.kind().value() == SocketKind.NEUTRAL)
            .anyMatch(
                socket ->
                    socket.takes(electrode.plug().value())
                        || place.room().keeps().cables().stream()
                            .anyMatch(
                                cable ->
                                    cable
                                            .value()
                                            .connector()
                                            .value()
                                            .equals(electrode.plug().value())
                                        && socket.takes(cable.value().plug().value())));
    return weight && goesIn;
  }

  // Contacts, for every minute of the week

  private static Set<String> phones(RoomAtAsset place, DayOfWeek day, LocalTime time) {
    int minute = (day.getValue() - 1) * 24 * 60 + time.toSecondOfDay() / 60;
    Set<String> answering = new TreeSet<>();
    Set<String> otherwise = new TreeSet<>();
    for (Contact contact : place.room().location().value().contacts()) {
      if (contact.hours().value().allOthers()) {
        otherwise.add(phone(contact));
      }
      for (ContactHours.Stretch stretch : contact.hours().value().stretches()) {
        int from = stretch.from().toSecondOfDay() / 60;
        int to = stretch.to().toSecondOfDay() / 60;
        for (DayOfWeek first : stretch.days()) {
          for (int at = from; at < (to > from ? to : to + 24 * 60); at++) {
            if (((first.getValue() - 1) * 24 * 60 + at) % WEEK == minute) {
              answering.add(phone(contact));
            }
          }
        }
      }
    }
    return answering.isEmpty() ? otherwise : answering;
  }

  private static String phone(Contact contact) {
    return contact.phone().value().toLowerCase(Locale.ROOT);
  }
}
