package stackside.inspect;

import com.google.zxing.ChecksumException;
import com.google.zxing.FormatException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.common.DecoderResult;
import com.google.zxing.qrcode.decoder.Decoder;
import java.util.List;
import java.util.Optional;

/**
 * Finds the QR code among the shapes of a page and reads it. It is the one figure that holds
 * nothing but dark filled rectangles on a common grid.
 */
final class CodeReader {

  /** How many rectangles a drawing has to have before it can be a code. */
  private static final int LEAST = 100;

  private static final int FINDER = 7;

  private CodeReader() {}

  static Optional<ReadCode> read(List<PaintedArea> areas, List<PrintedWords> words) {
    List<Box> dark =
        areas.stream()
            .filter(area -> area.inFigure() && area.outline().isEmpty())
            .filter(area -> area.fill().filter(CodeReader::dark).isPresent())
            .map(PaintedArea::box)
            .toList();
    if (dark.size() < LEAST) {
      return Optional.empty();
    }
    double module = dark.stream().mapToDouble(Box::height).min().orElseThrow();
    List<Box> grid = dark.stream().filter(box -> Math.abs(box.height() - module) < 0.02).toList();
    Box symbol = grid.stream().reduce(Box::with).orElseThrow();
    return decoded(grid, symbol, areas, words);
  }

  private static boolean dark(Colour colour) {
    return colour.contrast(Colour.WHITE) >= 7;
  }

  private static Optional<ReadCode> decoded(
      List<Box> grid, Box symbol, List<PaintedArea> areas, List<PrintedWords> words) {
    double finder = grid.get(0).width();
    double module = finder / FINDER;
    int size = (int) Math.round(symbol.width() / module);
    if (size < 21 || size > 177) {
      return Optional.empty();
    }
    BitMatrix bits = new BitMatrix(size);
    for (Box run : grid) {
      int row = (int) Math.round((run.top() - symbol.top()) / module);
      int from = (int) Math.round((run.left() - symbol.left()) / module);
      int to = (int) Math.round((run.right() - symbol.left()) / module);
      if (row >= 0 && row < size && from >= 0 && to <= size && from < to) {
        bits.setRegion(from, row, to - from, 1);
      }
    }
    return decode(bits)
        .map(
            result ->
                new ReadCode(
                    result.getText(),
                    symbol,
                    symbol.width() / size,
                    clear(symbol, areas, words) / (symbol.width() / size),
                    Optional.ofNullable(result.getECLevel()).orElse("")));
  }

  private static Optional<DecoderResult> decode(BitMatrix bits) {
    try {
      return Optional.of(new Decoder().decode(bits));
    } catch (ChecksumException | FormatException e) {
      return Optional.empty();
    }
  }

  /** The distance to the nearest other ink, in millimetres. */
  private static double clear(Box symbol, List<PaintedArea> areas, List<PrintedWords> words) {
    double nearest = Double.MAX_VALUE;
    for (PaintedArea area : areas) {
      if (!symbol.holds(area.box())) {
        nearest = Math.min(nearest, distance(symbol, area.box()));
      }
    }
    for (PrintedWords each : words) {
      nearest = Math.min(nearest, distance(symbol, each.box()));
    }
    return nearest;
  }

  private static double distance(Box one, Box other) {
    double across = Math.max(other.left() - one.right(), one.left() - other.right());
    double down = Math.max(other.top() - one.bottom(), one.top() - other.bottom());
    return Math.max(0, Math.max(across, down));
  }
}
