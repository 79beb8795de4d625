package stackside.inspect;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import stackside.render.OutputFile;

/** Takes a PDF apart: its pages, structure, fonts, words, shapes and code. */
final class PdfReader {

  static final double MILLIMETRES = 25.4 / 72;

  private PdfReader() {}

  static Inspection read(OutputFile file) {
    try (PDDocument document = Loader.loadPDF(file.bytes())) {
      PDPage page = document.getPage(0);
      StructureReader structure = StructureReader.of(document);
      PageReader reader = new PageReader(page, structure.roles());
      reader.processPage(page);
      List<PrintedWords> words = reader.words();
      return new Inspection(
          file.path(),
          document.getNumberOfPages(),
          page.getMediaBox().getWidth() * MILLIMETRES,
          page.getMediaBox().getHeight() * MILLIMETRES,
          words,
          reader.areas(),
          fonts(page),
          structure.elements(reader.textOfContent()),
          CodeReader.read(reader.areas(), words));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read back " + file.path(), e);
    }
  }

  private static List<EmbeddedFont> fonts(PDPage page) throws IOException {
    Map<String, EmbeddedFont> fonts = new TreeMap<>();
    PDResources resources = page.getResources();
    for (COSName name : resources.getFontNames()) {
      PDFont font = resources.getFont(name);
      String called = Optional.ofNullable(font.getName()).orElse("");
      fonts.put(called, new EmbeddedFont(called, font.isEmbedded()));
    }
    return new ArrayList<>(fonts.values());
  }
}
