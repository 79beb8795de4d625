package stackside.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stackside.derive.Analysis;
import stackside.model.Contact;
import stackside.model.Premises;
import stackside.source.Fault;
import stackside.source.Problem;
import stackside.source.Severity;

/**
 * Finds contacts whose phone cannot be dialled, and one number under two contacts of a location.
 */
final class PhoneUnusable implements Rule {
  private static final Fault FAULT =
      new Fault(
          "phone-unusable", Severity.ERROR, "a phone number cannot be dialled, or is two people's");

  @Override
  public Fault fault() {
    return FAULT;
  }

  @Override
  public List<Problem> problems(Analysis analysis) {
    return analysis.unit().details().locations().stream()
        .flatMap(location -> of(location).stream())
        .toList();
  }

  private static List<Problem> of(Premises location) {
    List<Problem> found = new ArrayList<>();
    for (int i = 0; i < location.contacts().size(); i++) {
      Contact contact = location.contacts().get(i);
      Optional<Contact> same =
          location.contacts().subList(0, i).stream()
              .filter(other -> number(other).equals(number(contact)))
              .findFirst();
      if (!canBeDialled(contact)) {
        found.add(
            FAULT
                .at(
                    contact.phone().at(),
                    "'%s' is no number to dial".formatted(contact.phone().value()))
                .help("write the number in digits, with a word before it if need be: ext., bleep"));
      } else if (same.isPresent()) {
        found.add(
            FAULT
                .at(
                    contact.phone().at(),
                    "the number of %s is that of %s"
                        .formatted(Wording.quoted(contact), Wording.quoted(same.orElseThrow())))
                .note(same.orElseThrow().phone().at(), "where it stands first")
                .help("correct one of the two, or make one contact of them"));
      }
    }
    return found;
  }

  private static boolean canBeDialled(Contact contact) {
    return contact
        .phone()
        .value()
        .matches("(?:\\p{L}+[.:]? )*[+(]?[0-9][0-9 ()./+-]*(?: \\p{L}+[.:]? [0-9]+)?");
  }

  private static String number(Contact contact) {
    return contact.phone().value().replaceAll("\\s", "");
  }
}
