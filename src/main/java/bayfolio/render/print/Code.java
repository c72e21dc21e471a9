package bayfolio.render.print;

import io.nayuki.qrcodegen.DataTooLongException;
import io.nayuki.qrcodegen.QrCode;
import io.nayuki.qrcodegen.QrSegment;
import java.util.List;

/**
 * An address as a code that phones read, ISO/IEC 18004.
 *
 * @param modules along one side
 * @param path of its dark modules, in modules from its upper left one
 */
record Code(int modules, String path) {
    /** Of light modules around it, on each side; the standard wants as many. */
    static final int QUIET = 4;

    /**
     * In the order in which they are wanted: as much as is lost on a dirty door can be made up for.
     *
     * @param largest version, as the standard counts sizes, whose modules are still large enough on a label
     */
    private record Level(QrCode.Ecc made, int largest) {}

    private static final List<Level> LEVELS = List.of(new Level(QrCode.Ecc.HIGH, 4), new Level(QrCode.Ecc.QUARTILE, 5));

    private static QrCode drawn(String address) {
        List<QrSegment> segments = QrSegment.makeSegments(address);
        for (Level level : LEVELS) {
            try {
                return QrCode.encodeSegments(segments, level.made(), QrCode.MIN_VERSION, level.largest(), -1, true);
            } catch (DataTooLongException e) {
                // With less to make up for it is shorter.
                continue;
            }
        }
        // Of a long address less may be lost, so that its modules stay large.
        return QrCode.encodeText(address, QrCode.Ecc.MEDIUM);
    }

    static Code of(String address) {
        QrCode code = drawn(address);
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < code.size; y++) {
            for (int x = 0; x < code.size; x++) {
                int end = x;
                while (code.getModule(end, y)) {
                    end++;
                }
                if (end > x) {
                    path.append('M')
                            .append(x)
                            .append(' ')
                            .append(y)
                            .append('h')
                            .append(end - x)
                            .append("v1h-")
                            .append(end - x)
                            .append('z');
                    x = end;
                }
            }
        }
        return new Code(code.size, path.toString());
    }
}
