package stackside.derive.question;

import java.util.List;
import java.util.stream.Stream;
import stackside.derive.Analysis;
import stackside.derive.circuit.OutcomeClass;
import stackside.derive.circuit.Press;
import stackside.derive.difference.RoomAtAsset;
import stackside.derive.question.Reply.Comes;
import stackside.derive.question.Subject.WhatComesOf;
import stackside.model.SingleFault;

/** What a fault leads to, according to the circuit model. */
record FaultTopic(Analysis analysis) implements Topic {

  @Override
  public List<WhatComesOf> subjects(RoomAtAsset place) {
    return Stream.of(SingleFault.values()).map(WhatComesOf::new).toList();
  }

  /** There are several if the outcome depends on how the fault occurs, or on the pedal. */
  @Override
  public List<Reply> right(RoomAtAsset place, Subject subject) {
    return subject instanceof WhatComesOf asked
        ? analysis.circuits().signsIn(place.room(), place.asset()).stream()
            .filter(sign -> sign.fault() == asked.fault())
            .flatMap(sign -> sign.outcomes().stream())
            .flatMap(outcome -> outcome.presses().stream())
            .map(Press::outcomeClass)
            .filter(outcome -> outcome != OutcomeClass.RIGHT)
            .distinct()
            .<Reply>map(Comes::new)
            .toList()
        : List.of();
  }
}
