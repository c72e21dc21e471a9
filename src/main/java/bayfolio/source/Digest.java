package bayfolio.source;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** By which a translation knows what it was made of, and a phone which edition it keeps: the first letters of the SHA-256 of a text, in hexadecimal digits. */
public final class Digest {
    private static final int LETTERS = 12;

    private Digest() {}

    public static String of(String text) {
        return of(List.of(text.getBytes(StandardCharsets.UTF_8)));
    }

    /** Of files, one after the other. */
    public static String of(Iterable<byte[]> files) {
        MessageDigest digest = sha256();
        files.forEach(digest::update);
        return of(digest);
    }

    /** Of all that one was fed with. */
    public static String of(MessageDigest digest) {
        return whole(digest).substring(0, LETTERS);
    }

    /** To be fed with more than lies in memory at once. */
    public static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** All letters of it. */
    public static String whole(MessageDigest digest) {
        return HexFormat.of().formatHex(digest.digest());
    }
}
