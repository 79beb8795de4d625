package stackside.derive.question;

import java.time.DayOfWeek;
import java.time.LocalTime;
import stackside.model.Drill;
import stackside.model.Instrument;
import stackside.model.Lesion;
import stackside.model.PatientGroup;
import stackside.model.PedalAction;
import stackside.model.PedalColour;
import stackside.model.SingleFault;
import stackside.model.Site;
import stackside.model.Step;

/** What a question about a place asks. */
public sealed interface Subject {

  /** Which socket an instrument goes into; the reader finds it on the drawn panel. */
  record SocketFor(Instrument instrument) implements Subject {}

  /** What to set for a lesion at a site, or that it is done cold or not at all. */
  record AnswerTo(Lesion lesion, Site site, Step step, PatientGroup patients) implements Subject {}

  /** What is set on a pedal in an answer: mode and setting, or nothing. */
  record OnPedal(AnswerTo answer, PedalColour colour) implements Subject {}

  /** Which pedal does this, as seen by the person standing at it. */
  record PedalThat(PedalAction action) implements Subject {}

  /** What to check first, after making safe, when the sign of a drill is seen. */
  record FirstCheck(Drill drill) implements Subject {}

  /** What a fault leads to, and whether anything warns. */
  record WhatComesOf(SingleFault fault) implements Subject {}

  /** How the live socket is selected. */
  record Selection() implements Subject {}

  /** Which neutral electrode the patients of a group get. */
  record NeutralElectrode(PatientGroup patients) implements Subject {}

  /** Whom to call at an hour of the week. */
  record CallAt(DayOfWeek day, LocalTime time) implements Subject {}

  /** Which card is the current one. */
  record CurrentCard(String title) implements Subject {}
}
