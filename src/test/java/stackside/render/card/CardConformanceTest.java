package stackside.render.card;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import stackside.render.OutputFile;

/**
 * Every card and every record of the demonstration conforms to PDF/A-2b and PDF/UA-1, as checked by
 * veraPDF.
 */
final class CardConformanceTest {

  @BeforeAll
  static void prepare() {
    Conformance.prepare();
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
    Conformance.conforms(card, PDFAFlavour.PDFA_2_B);
  }

  @ParameterizedTest
  @MethodSource("cards")
  void cardCanBeFollowedByEar(OutputFile card) throws Exception {
    Conformance.conforms(card, PDFAFlavour.PDFUA_1);
  }
}
