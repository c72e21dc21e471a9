package bayfolio.typeface;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.jspecify.annotations.Nullable;

/**
 * A face that the program carries, since paper must look the same wherever it is laid out. What the first ones lack, such as
 * an arrow, comes from the last ones. Their licences lie beside them.
 */
public enum Face {
    TEXT("text", "text", 400),
    TEXT_BOLD("text-bold", "text", 700),
    SIGNS("signs", "signs", 400),
    SIGNS_BOLD("signs-bold", "signs", 700);

    private final String file;
    private final String family;
    private final int weight;
    private @Nullable Metrics metrics;

    /** @param widths by glyph, of an em */
    private record Metrics(CmapLookup letters, double[] widths, double capital) {}

    Face(String file, String family, int weight) {
        this.file = file + ".ttf";
        this.family = family;
        this.weight = weight;
    }

    /** As styles name it. */
    public String family() {
        return family;
    }

    /** As styles count it. */
    public int weight() {
        return weight;
    }

    /** The TrueType file. */
    public byte[] bytes() {
        try (InputStream in = Objects.requireNonNull(Face.class.getResourceAsStream("/bayfolio/faces/" + file), file)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public InputStream stream() {
        return new ByteArrayInputStream(bytes());
    }

    private boolean has(int codePoint) {
        return metrics().letters().getGlyphId(codePoint) != 0;
    }

    private synchronized Metrics metrics() {
        Metrics known = metrics;
        if (known == null) {
            try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(bytes()))) {
                double em = font.getUnitsPerEm();
                double[] widths = new double[font.getNumberOfGlyphs()];
                for (int glyph = 0; glyph < widths.length; glyph++) {
                    widths[glyph] = font.getAdvanceWidth(glyph) / em;
                }
                known = new Metrics(
                        font.getUnicodeCmapLookup(),
                        widths,
                        font.getOS2Windows().getCapHeight() / em);
                metrics = known;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return known;
    }

    /** How wide a line is, of its size; what the face lacks is as wide as where it comes from. */
    public double width(String line) {
        return line.codePoints()
                .mapToDouble(each -> {
                    Metrics from = of(weight).stream()
                            .filter(face -> face.has(each))
                            .findFirst()
                            .orElse(this)
                            .metrics();
                    return from.widths()[from.letters().getGlyphId(each)];
                })
                .sum();
    }

    /** How tall a capital letter is, of its size. */
    public double capital() {
        return metrics().capital();
    }

    /** The first code point that no face of some weight has a letter for; spaces and breaks need none. */
    public static OptionalInt lacking(String text) {
        return text.codePoints()
                .filter(each -> !plain(each) && !Character.isWhitespace(each) && !everyWeightHas(each))
                .findFirst();
    }

    /** Every face of text has these, which spares most texts the look. */
    private static boolean plain(int codePoint) {
        return codePoint >= ' ' && codePoint <= '~';
    }

    private static boolean everyWeightHas(int codePoint) {
        return Arrays.stream(values())
                .mapToInt(Face::weight)
                .distinct()
                .allMatch(weight -> of(weight).stream().anyMatch(face -> face.has(codePoint)));
    }

    private static List<Face> of(int weight) {
        return Arrays.stream(values()).filter(face -> face.weight == weight).toList();
    }
}
