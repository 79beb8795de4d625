package stackside.render.card;

import com.lowagie.text.Document;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfStream;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfStructureElement;
import com.lowagie.text.pdf.PdfWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.function.BiConsumer;

/**
 * One A4 page as a tagged PDF that declares PDF/A-2b and PDF/UA-1. Dates, file id and the names of
 * font subsets depend only on what is printed, so that the same card always has the same bytes.
 *
 * @param language a BCP 47 tag
 * @param said everything that the card says; the file id is derived from it
 */
record CardDocument(String title, String language, LocalDate day, String said, Typeface typeface) {

  static final double PAGE_WIDTH = 210;
  static final double PAGE_HEIGHT = 297;

  private static final String PRODUCER = "Stackside";
  private static final double POINTS = 72 / 25.4;

  /** The bytes of the page painted on the canvas, within this document's structure. */
  byte[] bytes(BiConsumer<Canvas, PdfStructureElement> paint) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Document document =
        new Document(new Rectangle((float) (PAGE_WIDTH * POINTS), (float) (PAGE_HEIGHT * POINTS)));
    PdfWriter writer = PdfWriter.getInstance(document, out);
    try {
      prepare(writer);
      document.open();
      describe(writer);
      PdfStructureElement root =
          new PdfStructureElement(writer.getStructureTreeRoot(), new PdfName("Document"));
      paint.accept(new Canvas(writer.getDirectContent(), typeface, PAGE_HEIGHT), root);
      document.close();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write to memory", e);
    }
    return out.toByteArray();
  }

  private void prepare(PdfWriter writer) {
    writer.setPdfVersion(PdfWriter.VERSION_1_7);
    writer.setTagged();
    writer.setTabs(PdfName.S);
    writer.setViewerPreferences(PdfWriter.DisplayDocTitle);
    writer.setXmpMetadata(xmp().getBytes(StandardCharsets.UTF_8));
  }

  private void describe(PdfWriter writer) throws IOException {
    PdfDictionary info = writer.getInfo();
    info.put(PdfName.TITLE, new PdfString(title, PdfObject.TEXT_UNICODE));
    info.put(PdfName.PRODUCER, new PdfString(PRODUCER));
    info.put(PdfName.CREATIONDATE, new PdfString("D:" + compact() + "000000Z"));
    info.put(PdfName.MODDATE, new PdfString("D:" + compact() + "000000Z"));
    info.put(PdfName.FILEID, fileId());
    writer.getExtraCatalog().put(new PdfName("Lang"), new PdfString(language));
    writer.getExtraCatalog().put(new PdfName("OutputIntents"), new PdfArray(intent(writer)));
  }

  private String compact() {
    return day.toString().replace("-", "");
  }

  private PdfObject fileId() {
    byte[] id = digest();
    PdfArray both = new PdfArray();
    both.add(new PdfString(id).setHexWriting(true));
    both.add(new PdfString(id).setHexWriting(true));
    return both;
  }

  private byte[] digest() {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      byte[] all =
          digest.digest((day + "\n" + title + "\n" + said).getBytes(StandardCharsets.UTF_8));
      byte[] id = new byte[16];
      System.arraycopy(all, 0, id, 0, id.length);
      return id;
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** sRGB, using the program's own profile, not the platform's. */
  private static PdfDictionary intent(PdfWriter writer) throws IOException {
    PdfDictionary intent = new PdfDictionary(new PdfName("OutputIntent"));
    intent.put(PdfName.S, new PdfName("GTS_PDFA1"));
    intent.put(new PdfName("OutputConditionIdentifier"), new PdfString("sRGB"));
    intent.put(new PdfName("Info"), new PdfString("sRGB"));
    intent.put(
        new PdfName("DestOutputProfile"), writer.addToBody(profile()).getIndirectReference());
    return intent;
  }

  /** The committed bytes; the platform's colour management would rewrite them. */
  private static PdfStream profile() throws IOException {
    try (InputStream stream =
        CardDocument.class.getResourceAsStream("/stackside/colour/sRGB.icc")) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks its colour profile");
      }
      PdfStream profile = new PdfStream(stream.readAllBytes());
      profile.put(new PdfName("N"), new PdfNumber(3));
      profile.flateCompress();
      return profile;
    }
  }

  private String xmp() {
    String date = day + "T00:00:00Z";
    return """
        <?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
        <x:xmpmeta xmlns:x="adobe:ns:meta/">
        <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about=""
          xmlns:dc="http://purl.org/dc/elements/1.1/"
          xmlns:xmp="http://ns.adobe.com/xap/1.0/"
          xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
          xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"
          xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"
          xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
          xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
          xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
        <pdfaid:part>2</pdfaid:part>
        <pdfaid:conformance>B</pdfaid:conformance>
        <pdfuaid:part>1</pdfuaid:part>
        <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%1$s</rdf:li></rdf:Alt></dc:title>
        <xmp:CreateDate>%2$s</xmp:CreateDate>
        <xmp:ModifyDate>%2$s</xmp:ModifyDate>
        <pdf:Producer>%3$s</pdf:Producer>
        <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
        <pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>
        <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
        <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
        <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
        <pdfaProperty:name>part</pdfaProperty:name>
        <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
        <pdfaProperty:category>internal</pdfaProperty:category>
        <pdfaProperty:description>The part of ISO 14289 that the file conforms to</pdfaProperty:description>
        </rdf:li></rdf:Seq></pdfaSchema:property>
        </rdf:li></rdf:Bag></pdfaExtension:schemas>
        </rdf:Description>
        </rdf:RDF>
        </x:xmpmeta>
        <?xpacket end="w"?>
        """
        .formatted(escaped(title), date, PRODUCER);
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
