package stackside.check;

import static stackside.check.Rule.error;
import static stackside.check.Rule.note;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.model.Asset;
import stackside.model.Condition;
import stackside.model.Evidence;
import stackside.model.Fact;
import stackside.model.Lamp;
import stackside.model.Machine;
import stackside.model.OutputSeen;
import stackside.model.Response;
import stackside.model.Tone;
import stackside.model.Unit;

/** How a machine is said to answer when something is wrong. */
final class MachineAnswerRules {

  private MachineAnswerRules() {}

  static List<Rule<CheckedUnit>> rules() {
    return List.of(
        error(
            "evidence-from-elsewhere",
            "a machine's answer was observed on another machine or with other software",
            MachineAnswerRules::evidenceFromElsewhere),
        error(
            "answer-to-impossible-condition",
            "a machine's description answers a condition that the machine cannot notice",
            MachineAnswerRules::answerToImpossibleCondition),
        error(
            "answer-impossible",
            "a machine is described as doing what it cannot do",
            MachineAnswerRules::answerImpossible),
        error(
            "lit-without-mains",
            "a lamp or the display is described as lit with the mains off",
            MachineAnswerRules::litWithoutMains),
        note(
            "condition-unanswered",
            "a machine's description does not say how it answers a condition",
            MachineAnswerRules::conditionUnanswered));
  }

  private static List<Finding> evidenceFromElsewhere(CheckedUnit checked) {
    List<Finding> found = new ArrayList<>();
    for (Machine machine : checked.unit().machines()) {
      for (Response answer : machine.answers().values()) {
        answer
            .evidence()
            .value()
            .observation()
            .flatMap(it -> evidenceFromElsewhere(checked.unit(), machine, it))
            .ifPresent(found::add);
      }
    }
    return found;
  }

  private static Optional<Finding> evidenceFromElsewhere(
      Unit unit, Machine machine, Evidence.Observation observation) {
    Optional<Asset> asset =
        unit.assets().stream()
            .filter(it -> it.id().equals(observation.asset().value()))
            .findFirst();
    if (asset.isPresent() && !asset.orElseThrow().machine().value().id().equals(machine.id())) {
      return Optional.of(
          Finding.at(
                  observation.asset().at(),
                  "%s is not %s but %s"
                      .formatted(
                          observation.asset().value().slug(),
                          Wording.quoted(machine),
                          Wording.quoted(asset.orElseThrow().machine().value())))
              .note(asset.orElseThrow().machine().at(), "the asset's machine")
              .help("write the number of the generator that was looked at"));
    }
    String software = observation.software().value();
    if (machine.software().stream().noneMatch(it -> it.value().equals(software))) {
      return Optional.of(
          Finding.at(
                  observation.software().at(),
                  "this was observed with software %s, but the description covers only %s"
                      .formatted(
                          software,
                          Wording.list(machine.software().stream().map(Fact::value).toList())))
              .help("look again with the software in use, or correct the version"));
    }
    return Optional.empty();
  }

  private static List<Finding> answerToImpossibleCondition(CheckedUnit checked) {
    List<Finding> found = new ArrayList<>();
    for (Machine machine : checked.unit().machines()) {
      machine
          .answers()
          .forEach(
              (condition, answer) -> {
                if (!machine.mayMeet(condition)) {
                  found.add(answerToImpossibleCondition(machine, condition, answer));
                }
              });
    }
    return found;
  }

  private static Finding answerToImpossibleCondition(
      Machine machine, Condition condition, Response answer) {
    return Finding.at(
            answer.at(),
            "%s cannot notice this: %s"
                .formatted(Wording.quoted(machine), reason(machine, condition)))
        .help("remove the answer, or correct the description");
  }

  private static String reason(Machine machine, Condition condition) {
    return switch (condition) {
      case SELECTED_SOCKET_EMPTY -> "none of its sockets senses a plug";
      case NEUTRAL_CONTACT_POOR, NEUTRAL_CIRCUIT_OPEN ->
          "its monitor is '%s'".formatted(machine.monitor().value().word());
      case ARGON_EMPTY -> "it has no argon mode";
      case INSTRUMENT_CIRCUIT_OPEN, FOOT_SWITCH_MISSING, MAINS_OFF ->
          throw new IllegalStateException("every machine meets " + condition.word());
    };
  }

  private static List<Finding> answerImpossible(CheckedUnit checked) {
    return checked.unit().machines().stream()
        .flatMap(machine -> machine.answers().entrySet().stream())
        .flatMap(answer -> answerImpossible(answer.getKey(), answer.getValue()))
        .toList();
  }

  private static Stream<Finding> answerImpossible(Condition condition, Response response) {
    Stream<Finding> output =
        response.output().stream()
            .filter(seen -> seen.value() != OutputSeen.NONE && givesNone(condition))
            .map(
                seen ->
                    Finding.at(
                            seen.at(),
                            "'%s' lets no current through, but the output is given as %s"
                                .formatted(condition.spoken(), seen.value().spoken()))
                        .help("correct the output to 'none'"));
    Stream<Finding> tone =
        response.tone().stream()
            .filter(heard -> heard.value() != Tone.NONE && condition == Condition.MAINS_OFF)
            .map(
                heard ->
                    Finding.at(
                            heard.at(),
                            "with the mains off nothing sounds, but the tone is given as "
                                + heard.value().spoken())
                        .help("correct the tone to 'none'"));
    return Stream.concat(output, tone);
  }

  /** An open circuit carries no current, whatever the machine does. */
  private static boolean givesNone(Condition condition) {
    return switch (condition) {
      case INSTRUMENT_CIRCUIT_OPEN, SELECTED_SOCKET_EMPTY, FOOT_SWITCH_MISSING, MAINS_OFF -> true;
      case NEUTRAL_CIRCUIT_OPEN, NEUTRAL_CONTACT_POOR, ARGON_EMPTY -> false;
    };
  }

  private static List<Finding> conditionUnanswered(CheckedUnit checked) {
    List<Finding> found = new ArrayList<>();
    for (Machine machine : checked.unit().machines()) {
      List<String> open =
          Stream.of(Condition.values())
              .filter(machine::mayMeet)
              .filter(condition -> !machine.answers().containsKey(condition))
              .filter(condition -> !toldByOthers(checked.analysis(), machine, condition))
              .map(condition -> "'" + condition.word() + "'")
              .toList();
      if (!open.isEmpty()) {
        found.add(
            Finding.at(
                    machine.name().at(),
                    "how %s answers %s is not described, so it counts as unnoticed"
                        .formatted(Wording.quoted(machine), Wording.list(open)))
                .help("look at the machine or its instructions, and add it under 'answers'"));
      }
    }
    return found;
  }

  /** If the set-up does not guard against it, that is an error, and its message says this too. */
  private static boolean toldByOthers(Analysis analysis, Machine machine, Condition condition) {
    return Consequences.of(analysis).stream()
        .filter(sign -> sign.machine().id().equals(machine.id()))
        .filter(sign -> sign.condition().equals(Optional.of(condition)))
        .anyMatch(sign -> sign.guards().isEmpty());
  }

  private static List<Finding> litWithoutMains(CheckedUnit checked) {
    return checked.unit().machines().stream()
        .flatMap(machine -> machine.answer(Condition.MAINS_OFF).stream())
        .flatMap(answer -> Stream.concat(litLamps(answer), litDisplay(answer)))
        .toList();
  }

  private static Stream<Finding> litLamps(Response answer) {
    return answer.lamps().entrySet().stream()
        .filter(lamp -> !Lamp.isOut(lamp.getValue().value()))
        .map(
            lamp ->
                Finding.at(
                        lamp.getValue().at(),
                        "with the mains off no lamp is lit, but '%s' is given as '%s'"
                            .formatted(lamp.getKey(), lamp.getValue().value()))
                    .help("write 'off', or leave the lamp out"));
  }

  private static Stream<Finding> litDisplay(Response answer) {
    return answer.display().stream()
        .map(
            shown ->
                Finding.at(
                        shown.at(),
                        "with the mains off the display is dark, but it is described as showing '%s'"
                            .formatted(shown.value()))
                    .help("leave the display out"));
  }
}
