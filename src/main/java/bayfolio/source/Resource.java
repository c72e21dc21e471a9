package bayfolio.source;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;

/** A file that comes with the program. */
public final class Resource {
    private Resource() {}

    /** @param name as the program has it: {@code headers.txt} */
    public static byte[] bytes(String name) {
        String path = "/bayfolio/" + name;
        try (InputStream in = Objects.requireNonNull(Resource.class.getResourceAsStream(path), path)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
