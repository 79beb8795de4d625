package stackside.inspect;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;
import org.jspecify.annotations.Nullable;

/** Runs a page's content and notes every letter and shape that it paints, and where. */
final class PageReader extends PDFGraphicsStreamEngine {

  private final Map<Integer, List<String>> roles;
  private final double top;
  private final List<PaintedArea> areas = new ArrayList<>();
  private final WordCollector words = new WordCollector();
  private final Map<Integer, StringBuilder> text = new TreeMap<>();
  private final Map<Glyph, Rectangle2D> outlines = new HashMap<>();
  private final Deque<Integer> content = new ArrayDeque<>();
  private GeneralPath path = new GeneralPath();

  private static final int ARTIFACT = -1;

  /** A letter of an embedded font, by its number there. */
  private record Glyph(COSDictionary font, int code) {}

  PageReader(PDPage page, Map<Integer, List<String>> roles) {
    super(page);
    this.roles = roles;
    this.top = page.getMediaBox().getUpperRightY();
  }

  List<PrintedWords> words() {
    return words.words();
  }

  List<PaintedArea> areas() {
    return Collections.unmodifiableList(areas);
  }

  /** The words of each piece of content, by its number. */
  Map<Integer, String> textOfContent() {
    Map<Integer, String> all = new TreeMap<>();
    text.forEach((number, words) -> all.put(number, words.toString()));
    return all;
  }

  private List<String> rolesNow() {
    return content.isEmpty() ? List.of() : roles.getOrDefault(content.peek(), List.of());
  }

  @Override
  public void beginMarkedContentSequence(COSName tag, @Nullable COSDictionary properties) {
    int number = properties == null ? ARTIFACT : properties.getInt(COSName.MCID, ARTIFACT);
    content.push(number);
    super.beginMarkedContentSequence(tag, properties);
  }

  @Override
  public void endMarkedContentSequence() {
    if (!content.isEmpty()) {
      content.pop();
    }
    super.endMarkedContentSequence();
  }

  // Letters

  @Override
  protected void showGlyph(Matrix matrix, PDFont font, int code, Vector displacement)
      throws IOException {
    String letter = Optional.ofNullable(font.toUnicode(code)).orElse("\ufffd");
    if (!content.isEmpty()) {
      text.computeIfAbsent(content.peek(), number -> new StringBuilder()).append(letter);
    }
    AffineTransform place = matrix.createAffineTransform();
    Rectangle2D outline = outline(font, code);
    words.add(
        new WordCollector.Letter(
            letter,
            box(place.createTransformedShape(outline).getBounds2D()),
            (top - matrix.getTranslateY()) * PdfReader.MILLIMETRES,
            matrix.getTranslateX() * PdfReader.MILLIMETRES,
            (matrix.getTranslateX() + displacement.getX() * matrix.getScalingFactorX())
                * PdfReader.MILLIMETRES,
            outline.getMaxY() * matrix.getScalingFactorY() * PdfReader.MILLIMETRES,
            matrix.getScalingFactorY(),
            Optional.ofNullable(font.getName()).orElse(""),
            colour(getGraphicsState().getNonStrokingColor()),
            rolesNow(),
            Math.abs(matrix.getShearX()) < 1e-6 && Math.abs(matrix.getShearY()) < 1e-6));
  }

  private Rectangle2D outline(PDFont font, int code) throws IOException {
    Glyph glyph = new Glyph(font.getCOSObject(), code);
    Rectangle2D known = outlines.get(glyph);
    if (known == null) {
      known = measured(font, code);
      outlines.put(glyph, known);
    }
    return known;
  }

  /** The outline of the embedded letter, in em. */
  private static Rectangle2D measured(PDFont font, int code) throws IOException {
    if (font instanceof PDVectorFont vectors) {
      Rectangle2D bounds = vectors.getNormalizedPath(code).getBounds2D();
      return new Rectangle2D.Double(
          bounds.getX() / 1000,
          bounds.getY() / 1000,
          bounds.getWidth() / 1000,
          bounds.getHeight() / 1000);
    }
    return new Rectangle2D.Double();
  }

  private Box box(Rectangle2D bounds) {
    return new Box(
        bounds.getMinX() * PdfReader.MILLIMETRES,
        (top - bounds.getMaxY()) * PdfReader.MILLIMETRES,
        bounds.getMaxX() * PdfReader.MILLIMETRES,
        (top - bounds.getMinY()) * PdfReader.MILLIMETRES);
  }

  private static Colour colour(PDColor colour) throws IOException {
    int rgb = colour.toRGB();
    return new Colour((rgb >> 16) & 0xff, (rgb >> 8) & 0xff, rgb & 0xff);
  }

  // Shapes

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
    path.moveTo(p0.getX(), p0.getY());
    path.lineTo(p1.getX(), p1.getY());
    path.lineTo(p2.getX(), p2.getY());
    path.lineTo(p3.getX(), p3.getY());
    path.closePath();
  }

  @Override
  public void moveTo(float x, float y) {
    path.moveTo(x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    path.lineTo(x, y);
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    path.curveTo(x1, y1, x2, y2, x3, y3);
  }

  @Override
  public Point2D getCurrentPoint() {
    return path.getCurrentPoint();
  }

  @Override
  public void closePath() {
    path.closePath();
  }

  @Override
  public void endPath() {
    path = new GeneralPath();
  }

  @Override
  public void strokePath() throws IOException {
    note(Optional.empty(), Optional.of(colour(getGraphicsState().getStrokingColor())));
  }

  @Override
  public void fillPath(int windingRule) throws IOException {
    note(Optional.of(colour(getGraphicsState().getNonStrokingColor())), Optional.empty());
  }

  @Override
  public void fillAndStrokePath(int windingRule) throws IOException {
    note(
        Optional.of(colour(getGraphicsState().getNonStrokingColor())),
        Optional.of(colour(getGraphicsState().getStrokingColor())));
  }

  /** Each part of a path is an area of its own. */
  private void note(Optional<Colour> fill, Optional<Colour> outline) {
    double line =
        outline.isPresent()
            ? getGraphicsState().getLineWidth()
                * getGraphicsState().getCurrentTransformationMatrix().getScalingFactorX()
            : 0;
    for (Path2D part : PathParts.of(path)) {
      Rectangle2D bounds = part.getBounds2D();
      Rectangle2D ink =
          new Rectangle2D.Double(
              bounds.getX() - line / 2,
              bounds.getY() - line / 2,
              bounds.getWidth() + line,
              bounds.getHeight() + line);
      areas.add(new PaintedArea(box(ink), fill, outline, line * PdfReader.MILLIMETRES, rolesNow()));
    }
    path = new GeneralPath();
  }

  @Override
  public void clip(int windingRule) {}

  @Override
  public void drawImage(PDImage image) {
    Matrix place = getGraphicsState().getCurrentTransformationMatrix();
    Rectangle2D square = new Rectangle2D.Double(0, 0, 1, 1);
    Rectangle2D bounds = place.createAffineTransform().createTransformedShape(square).getBounds2D();
    areas.add(new PaintedArea(box(bounds), Optional.empty(), Optional.empty(), 0, rolesNow()));
  }

  @Override
  public void shadingFill(COSName shadingName) {}
}
