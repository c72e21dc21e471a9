package bayfolio.check;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/** Files that somebody makes who means no good. */
public final class HostileInput {
    private HostileInput() {}

    /** The head of a gray PNG and no more: a claim of size. PNG 1.2, 4.1.1. */
    public static byte[] png(int width, int height) {
        ByteBuffer head = ByteBuffer.allocate(17)
                .put("IHDR".getBytes(StandardCharsets.US_ASCII))
                .putInt(width)
                .putInt(height)
                .put(new byte[] {8, 0, 0, 0, 0});
        CRC32 sum = new CRC32();
        sum.update(head.array());
        return ByteBuffer.allocate(8 + 4 + 17 + 4)
                .put(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'})
                .putInt(13)
                .put(head.array())
                .putInt((int) sum.getValue())
                .array();
    }
}
