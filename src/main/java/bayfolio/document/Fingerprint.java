package bayfolio.document;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** By what one state of a handbook is told from another one where no edition tells: a digest of what renters read. */
final class Fingerprint {
    private static final int LETTERS = 8;

    private Fingerprint() {}

    /** @param handbook as renters see it */
    static String of(Handbook handbook) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256")
                    .digest(DocumentJson.asRead(handbook).getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest).substring(0, LETTERS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
