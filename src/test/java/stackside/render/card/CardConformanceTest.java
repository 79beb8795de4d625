package stackside.render.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;
import stackside.render.OutputFile;

/**
 * Holds every card and every record of the demonstration to PDF/A-2b and PDF/UA-1, as veraPDF
 * checks them.
 */
final class CardConformanceTest {

  @BeforeAll
  static void prepare() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  static List<OutputFile> cards() {
    return Stream.concat(
            Demonstration.cards().stream(),
            RecordRenderer.render(Demonstration.publication()).stream())
        .toList();
  }

  @ParameterizedTest
  @MethodSource("cards")
  void cardCanBeArchived(OutputFile card) throws Exception {
    conforms(card, PDFAFlavour.PDFA_2_B);
  }

  @ParameterizedTest
  @MethodSource("cards")
  void cardCanBeFollowedByEar(OutputFile card) throws Exception {
    conforms(card, PDFAFlavour.PDFUA_1);
  }

  private static void conforms(OutputFile card, PDFAFlavour flavour) throws Exception {
    try (PDFAParser parser =
            Foundries.defaultInstance()
                .createParser(new ByteArrayInputStream(card.bytes()), flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      ValidationResult result = validator.validate(parser);
      assertThat(result.getTotalAssertions()).isPositive();
      assertThat(result.isCompliant()).as(failures(result)).isTrue();
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
