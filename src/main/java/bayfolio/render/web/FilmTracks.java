package bayfolio.render.web;

import bayfolio.document.Content;
import java.util.Locale;

/**
 * What is told beside a film: captions of what is said, and chapters of what is seen.
 *
 * @see <a href="https://www.w3.org/TR/webvtt1/">WebVTT</a>
 */
final class FilmTracks {
    private FilmTracks() {}

    static String captions(Content.Film film) {
        return film.film() + "-captions.vtt";
    }

    static String chapters(Content.Film film) {
        return film.film() + "-chapters.vtt";
    }

    /** The chapters, each named as its page is; those that the reader of the page sees. */
    static String of(Content.Film film) {
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
