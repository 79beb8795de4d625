package stackside.render.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.util.stream.Collectors;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;
import stackside.render.OutputFile;

/** Checks that a finished file conforms to a standard, using veraPDF. */
final class Conformance {
  private Conformance() {}

  static void prepare() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  static void conforms(OutputFile card, PDFAFlavour flavour) throws Exception {
    try (PDFAParser parser =
            Foundries.defaultInstance()
                .createParser(new ByteArrayInputStream(card.bytes()), flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      ValidationResult result = validator.validate(parser);
      assertThat(result.getTotalAssertions()).isPositive();
      assertThat(result.isCompliant()).as(card.path() + ": " + failures(result)).isTrue();
    }
  }

  private static String failures(ValidationResult result) {
    return result.getTestAssertions().stream()
        .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
        .map(assertion -> assertion.getRuleId() + ": " + assertion.getMessage())
        .distinct()
        .collect(Collectors.joining("\n"));
  }
}
