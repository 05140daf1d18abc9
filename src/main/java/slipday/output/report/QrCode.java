package slipday.output.report;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.Map;
import org.apache.commons.lang3.StringUtils;

/** QR codes by ISO/IEC 18004, drawn. A quarter of one may be lost and it is still read. */
final class QrCode {
  /** Modules of clear margin on each side, as the standard asks. */
  private static final int QUIET = 4;

  private QrCode() {}

  static Svg of(String text) {
    ByteMatrix modules = modules(text);
    int size = modules.getWidth() + 2 * QUIET;
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < modules.getHeight(); y++) {
      int x = 0;
      while (x < modules.getWidth()) {
        int from = x;
        while (x < modules.getWidth() && modules.get(x, y) == 1) {
          x++;
        }
        if (x > from) {
          path.append('M').append(from + QUIET).append(' ').append(y + QUIET);
          path.append('h').append(x - from).append("v1h-").append(x - from).append('z');
        } else {
          x++;
        }
      }
    }
    Svg svg = new Svg();
    svg.open(
        "svg",
        "class",
        "qr",
        "viewBox",
        "0 0 " + size + " " + size,
        "role",
        "img",
        "aria-label",
        "QR code: " + text,
        "shape-rendering",
        "crispEdges");
    svg.leaf("rect", "width", size, "height", size, "fill", "#fff");
    svg.leaf("path", "fill", "#000", "d", path);
    return svg.close();
  }

  /**
   * Level Q mends 25 %. Letters beyond ASCII are written in UTF-8, and the code says so: the set
   * that holds where none is named has those of Western Europe alone.
   */
  private static ByteMatrix modules(String text) {
    Map<EncodeHintType, ?> hints =
        StringUtils.isAsciiPrintable(text)
            ? Map.of()
            : Map.of(EncodeHintType.CHARACTER_SET, "UTF-8");
    try {
      return Encoder.encode(text, ErrorCorrectionLevel.Q, hints).getMatrix();
    } catch (WriterException e) {
      throw new IllegalArgumentException("`" + text + "` is too long for a QR code", e);
    }
  }
}
