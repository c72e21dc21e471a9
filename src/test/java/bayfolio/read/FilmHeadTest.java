package bayfolio.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bayfolio.TinyFilm;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a film tells of itself; and what is none. */
final class FilmHeadTest {
    @TempDir
    private Path folder;

    private FilmHead head(byte[] film, boolean webm) throws IOException {
        return FilmHead.of(Files.write(folder.resolve("film"), film), webm);
    }

    @Test
    void theFilmOfTheDemoFleetTellsItsLengthAndNoPlace() throws Exception {
        FilmHead head = FilmHead.of(Path.of("units/dunlin/films/walk-round.mp4"), false);

        assertThat(head.located()).isFalse();
        assertThat(head.seconds()).hasValue(75);
    }

    /** As a phone writes a place, and as the programs do through which films go. */
    @Test
    void aPlaceIsFoundHoweverItIsWritten() throws Exception {
        assertThat(head(TinyFilm.of(9, false), false).located()).isFalse();
        assertThat(head(TinyFilm.of(9, true), false).located()).isTrue();
        for (String key : new String[] {"loci", "com.apple.quicktime.location.ISO6709"}) {
            assertThat(head(TinyFilm.with(9, key), false).located()).as(key).isTrue();
        }
        byte[] webm = ("\u001aE\u00df\u00a3\u0000\u0042\u0082\u0084webm" + "x".repeat(60) + "LOCATION")
                .getBytes(StandardCharsets.ISO_8859_1);
        assertThat(head(webm, true).located()).isTrue();
        assertThat(head(Arrays.copyOf(webm, 60), true).located()).isFalse();
    }

    /** Cut off, or with bytes turned: it is read or refused, and nothing else comes of it. */
    @Test
    void aBrokenFilmIsRefused() throws Exception {
        byte[] sound = TinyFilm.of(9, true);
        assertThatThrownBy(() -> head(new byte[0], false)).isInstanceOf(IOException.class);
        assertThatThrownBy(() -> head(Arrays.copyOf(sound, sound.length - 3), false))
                .isInstanceOf(IOException.class);
        assertThatThrownBy(() -> head(sound, true)).isInstanceOf(IOException.class);
        Random random = new Random(7);
        int refused = 0;
        for (int i = 0; i < 2000; i++) {
            byte[] broken = sound.clone();
            for (int k = 0; k < 3; k++) {
                broken[random.nextInt(broken.length)] = (byte) random.nextInt(256);
            }
            try {
                head(broken, false);
            } catch (IOException told) {
                refused++;
            }
        }
        assertThat(refused).isBetween(100, 1999);
    }
}
