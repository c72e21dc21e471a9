package bayfolio;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/** The head of an MP4 file, without a picture: ISO/IEC 14496-12, 4.3 and 8.2.2. */
public final class TinyFilm {
    private TinyFilm() {}

    /**
     * @param seconds how long it says that it is
     * @param located whether it says where it was taken, as phones write it
     */
    public static byte[] of(int seconds, boolean located) {
        byte[] type = box("ftyp", "isom".getBytes(StandardCharsets.ISO_8859_1), new byte[] {0, 0, 2, 0}, brands());
        ByteBuffer header = ByteBuffer.allocate(100);
        header.putInt(12, 1000).putInt(16, 1000 * seconds);
        byte[] place = "+45.0000+009.0000/".getBytes(StandardCharsets.ISO_8859_1);
        byte[] told = located
                ? box("udta", box("\u00a9xyz", new byte[] {0, (byte) place.length, 0x15, (byte) 0xC7}, place))
                : new byte[0];
        return joined(type, box("moov", box("mvhd", header.array()), told));
    }

    /** One that has a key of another program in its user data. */
    public static byte[] with(int seconds, String key) {
        byte[] plain = of(seconds, false);
        return joined(plain, box("meta", key.getBytes(StandardCharsets.ISO_8859_1)));
    }

    private static byte[] brands() {
        return "isomiso2avc1mp41".getBytes(StandardCharsets.ISO_8859_1);
    }

    private static byte[] box(String kind, byte[]... inside) {
        byte[] all = joined(inside);
        return joined(
                ByteBuffer.allocate(4).putInt(8 + all.length).array(), kind.getBytes(StandardCharsets.ISO_8859_1), all);
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }
}
