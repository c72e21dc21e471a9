package bayfolio.mail;

import bayfolio.read.WholeFile;
import bayfolio.render.mail.Letter;
import bayfolio.source.Digest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** Where messages are written: a folder of files that is never a part of what is published. */
public record MailFolder(Path folder) {
    /** By which a folder is known into which something was published. */
    private static final String PUBLISHED = ".editions";

    /** @return whether it lies in what is published, or in the descriptions of the fleet */
    public boolean isPublic(Path fleet) throws IOException {
        Path at = folder.toAbsolutePath().normalize();
        Path there = at;
        while (there != null && !Files.exists(there, LinkOption.NOFOLLOW_LINKS)) {
            there = there.getParent();
        }
        Path real = there == null
                ? at
                : there.toRealPath().resolve(there.relativize(at)).normalize();
        Path units = fleet.toRealPath().resolve("units");
        for (Path around = real; around != null; around = around.getParent()) {
            if (around.equals(units) || Files.exists(around.resolve(PUBLISHED), LinkOption.NOFOLLOW_LINKS)) {
                return true;
            }
        }
        return false;
    }

    /** Whole, or not at all; one of that name is replaced. */
    void write(Letter letter, byte[] mail) throws IOException {
        Files.createDirectories(folder);
        new WholeFile(folder.resolve(name(letter.id())), mail).make();
    }

    /** Of a number of a booking that is no name of a file, what can be read of it, and its digest. */
    static String name(String id) {
        String harmless = id.replaceAll("[^A-Za-z0-9._-]", "_").replaceFirst("^\\.", "_");
        if (harmless.length() > 80) {
            harmless = harmless.substring(0, 80);
        }
        return (harmless.equals(id) ? id : harmless + "-" + Digest.of(id)) + ".eml";
    }
}
