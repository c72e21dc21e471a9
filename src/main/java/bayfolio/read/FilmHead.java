package bayfolio.read;

import java.io.EOFException;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a film says of itself, beside its pictures.
 *
 * @param located whether it tells where it was taken
 * @param seconds how long it is; a WebM film is not asked
 * @see <a href="https://www.iso.org/standard/83102.html">ISO/IEC 14496-12, 4.2, 4.3 and 8.2.2, from memory</a>
 * @see <a href="https://www.rfc-editor.org/rfc/rfc8794#section-11.2">RFC 8794, the EBML header</a>
 */
record FilmHead(boolean located, OptionalDouble seconds) {
    private static final byte[] EBML = {0x1A, 0x45, (byte) 0xDF, (byte) 0xA3};

    /** By which programs write a place: as phones do, as players do, and by the names of their keys. */
    private static final List<String> PLACES = List.of("\u00a9xyz", "loci", "ISO6709", "location.", "LOCATION");

    /**
     * @param webm whether it is to be WebM, and not MP4
     * @throws IOException where it is no such film, or broken
     */
    static FilmHead of(Path film, boolean webm) throws IOException {
        try (RandomAccessFile file = new RandomAccessFile(film.toFile(), "r")) {
            return webm ? webm(file) : mp4(file);
        }
    }

    private static FilmHead webm(RandomAccessFile file) throws IOException {
        byte[] all = bytes(file, file.length());
        String text = latin(all);
        if (Arrays.mismatch(all, EBML) != EBML.length
                || !text.substring(0, Math.min(64, text.length())).contains("webm")) {
            throw new IOException("no WebM");
        }
        // Tags stand before or behind the pictures; so long a word is in none of these by chance.
        return new FilmHead(text.contains("LOCATION") || text.contains("ISO6709"), OptionalDouble.empty());
    }

    private static FilmHead mp4(RandomAccessFile file) throws IOException {
        boolean typed = false;
        boolean located = false;
        OptionalDouble seconds = OptionalDouble.empty();
        while (file.getFilePointer() < file.length()) {
            long start = file.getFilePointer();
            long size = Integer.toUnsignedLong(file.readInt());
            String kind = latin(bytes(file, 4));
            if (size == 1) {
                size = file.readLong();
            } else if (size == 0) {
                size = file.length() - start;
            }
            long inside = size - (file.getFilePointer() - start);
            if (inside < 0 || start + size > file.length() || start == 0 && !kind.equals("ftyp")) {
                throw new IOException("no MP4");
            }
            if (kind.equals("ftyp")) {
                typed = !latin(bytes(file, inside)).startsWith("qt  ");
            } else if (!kind.equals("mdat")) {
                String head = latin(bytes(file, inside));
                located |= PLACES.stream().anyMatch(head::contains);
                seconds = kind.equals("moov") ? seconds(head) : seconds;
            }
            file.seek(start + size);
        }
        if (!typed) {
            throw new IOException("no MP4");
        }
        return new FilmHead(located, seconds);
    }

    private static OptionalDouble seconds(String head) {
        int at = head.indexOf("mvhd") + 4;
        if (at < 4 || at + 32 > head.length()) {
            return OptionalDouble.empty();
        }
        ByteBuffer header = ByteBuffer.wrap(head.substring(at, at + 32).getBytes(StandardCharsets.ISO_8859_1));
        boolean longer = header.get(0) == 1;
        double ticks = Integer.toUnsignedLong(header.getInt(longer ? 20 : 12));
        double length = longer ? header.getLong(24) : Integer.toUnsignedLong(header.getInt(16));
        return ticks > 0 && length > 0 ? OptionalDouble.of(length / ticks) : OptionalDouble.empty();
    }

    private static byte[] bytes(RandomAccessFile file, long count) throws IOException {
        if (count > Integer.MAX_VALUE - 16 || count > file.length() - file.getFilePointer()) {
            throw new EOFException();
        }
        byte[] bytes = new byte[(int) count];
        file.readFully(bytes);
        return bytes;
    }

    /** A letter for each byte. */
    private static String latin(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }
}
