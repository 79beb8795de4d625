package stackside.inspect;

import java.util.ArrayList;
import java.util.List;
import stackside.model.Contact;
import stackside.render.Numbers;
import stackside.render.plan.Block;
import stackside.render.plan.StepLine;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds cards on which a contact of the location, or its number at the end of a drill, is missing.
 */
final class ContactNotOnCard implements CardRule {

  private static final Fault FAULT =
      new Fault(
          "contact-not-on-card",
          Severity.ERROR,
          "a card or the last step of a drill lacks somebody to call");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(InspectedCard card) {
    List<Problem> problems = new ArrayList<>();
    String text = card.seen().text();
    for (Contact contact : card.plan().room().location().value().contacts()) {
      String phone = InspectedCard.spaced(Numbers.bind(contact.phone().value()));
      String whole = phone + " " + contact.role().value();
      if (!text.contains(whole)) {
        problems.add(FAULT.at(contact.at(), card.name() + " lacks '" + whole + "'"));
      }
      for (Block.Drilled drill : card.plan().blocks(Block.Drilled.class)) {
        StepLine last = drill.steps().get(drill.steps().size() - 1);
        if (last.part() == StepLine.Part.ESCALATE
            && !InspectedCard.spaced(last.action().words()).contains(phone)) {
          problems.add(
              FAULT.at(
                  contact.at(),
                  "the last step of '" + drill.title().words() + "' lacks '" + phone + "'"));
        }
      }
    }
    return problems;
  }
}
