package bayfolio.render.html;

import bayfolio.document.Content;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is told beside a film: captions of what is said, and chapters of what is seen.
 *
 * @see <a href="https://www.w3.org/TR/webvtt1/">WebVTT</a>
 */
public final class FilmTracks {
    private FilmTracks() {}

    public static String captions(Content.Film film) {
        return film.film() + "-captions.vtt";
    }

    public static String chapters(Content.Film film) {
        return film.film() + "-chapters.vtt";
    }

    /** The chapters, each named as its page is; those that the reader of the page sees. */
    public static String of(Content.Film film) {
        StringBuilder file = new StringBuilder("WEBVTT\n");
        for (Content.Film.Chapter chapter : film.chapters()) {
            file.append('\n')
                    .append(chapter.id().within())
                    .append('\n')
                    .append(time(chapter.from()))
                    .append(" --> ")
                    .append(time(chapter.to()))
                    .append('\n')
                    .append(escaped(chapter.thing().plain()))
                    .append('\n');
        }
        return file.toString();
    }

    /** Captions as they are given out: without notes, which are for whoever writes them. */
    public static String withoutNotes(String captions) {
        return Stream.of(captions.replaceAll("\r\n?", "\n").split("\n\n+", -1))
                .filter(block -> !block.matches("(?s)NOTE([ \t\n].*)?"))
                .collect(Collectors.joining("\n\n"));
    }

    private static String time(int thousandths) {
        return String.format(
                Locale.ROOT,
                "%02d:%02d:%02d.%03d",
                thousandths / 3_600_000,
                thousandths / 60_000 % 60,
                thousandths / 1000 % 60,
                thousandths % 1000);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
