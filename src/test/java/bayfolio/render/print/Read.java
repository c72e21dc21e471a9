package bayfolio.render.print;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.apache.pdfbox.text.TextPosition;

/** A PDF as another reader finds it: its pages as text, its letters, its tags. */
final class Read implements AutoCloseable {
    private static final double POINTS_IN_A_MILLIMETER = 72 / 25.4;

    private final PDDocument document;
    private final Map<COSDictionary, Integer> numbers = new IdentityHashMap<>();

    Read(byte[] pdf) throws IOException {
        this.document = Loader.loadPDF(pdf);
        int number = 0;
        for (PDPage page : document.getPages()) {
            numbers.put(page.getCOSObject(), ++number);
        }
    }

    PDDocument document() {
        return document;
    }

    int pages() {
        return document.getNumberOfPages();
    }

    /** The text of each page, in reading order. */
    List<String> texts() throws IOException {
        List<String> texts = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper();
        for (int page = 1; page <= pages(); page++) {
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            texts.add(stripper.getText(document));
        }
        return texts;
    }

    /**
     * A letter; lengths in millimeters from the upper left corner of its page.
     *
     * @param size in points
     */
    record Letter(int page, String letter, double left, double right, double top, double bottom, double size) {}

    List<Letter> letters() throws IOException {
        List<Letter> letters = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions) {
                for (TextPosition at : positions) {
                    if (!at.getUnicode().isBlank()) {
                        letters.add(new Letter(
                                getCurrentPageNo(),
                                at.getUnicode(),
                                at.getXDirAdj() / POINTS_IN_A_MILLIMETER,
                                (at.getXDirAdj() + at.getWidthDirAdj()) / POINTS_IN_A_MILLIMETER,
                                (at.getYDirAdj() - at.getHeightDir()) / POINTS_IN_A_MILLIMETER,
                                at.getYDirAdj() / POINTS_IN_A_MILLIMETER,
                                at.getTextMatrix().getScalingFactorY()));
                    }
                }
            }
        };
        stripper.getText(document);
        return letters;
    }

    /** Takes a picture that is drawn: its page, and where it begins and ends, in millimeters from the left. */
    interface Pictured {
        void at(int page, double left, double right);
    }

    void drawn(Pictured each) throws IOException {
        for (PDPage page : document.getPages()) {
            new PDFGraphicsStreamEngine(page) {
                @Override
                public void drawImage(PDImage image) {
                    var matrix = getGraphicsState().getCurrentTransformationMatrix();
                    double left = matrix.getTranslateX() / POINTS_IN_A_MILLIMETER;
                    each.at(
                            number(page.getCOSObject()),
                            left,
                            left + matrix.getScalingFactorX() / POINTS_IN_A_MILLIMETER);
                }

                @Override
                public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {}

                @Override
                public void clip(int rule) {}

                @Override
                public void moveTo(float x, float y) {}

                @Override
                public void lineTo(float x, float y) {}

                @Override
                public void curveTo(float a, float b, float c, float d, float e, float f) {}

                @Override
                public Point2D getCurrentPoint() {
                    return new Point2D.Double();
                }

                @Override
                public void closePath() {}

                @Override
                public void endPath() {}

                @Override
                public void strokePath() {}

                @Override
                public void fillPath(int rule) {}

                @Override
                public void fillAndStrokePath(int rule) {}

                @Override
                public void shadingFill(COSName name) {}

                void run() throws IOException {
                    processPage(page);
                }
            }.run();
        }
    }

    /** A link within the file: what can be read on it, and the page that it leads to. */
    record Leads(int page, String words, int to) {}

    List<Leads> links() throws IOException {
        List<Leads> links = new ArrayList<>();
        for (PDPage page : document.getPages()) {
            PDFTextStripperByArea areas = new PDFTextStripperByArea();
            Map<String, Integer> to = new TreeMap<>();
            for (PDAnnotation annotation : page.getAnnotations()) {
                if (annotation instanceof PDAnnotationLink link
                        && link.getAction() instanceof PDActionGoTo go
                        && go.getDestination() instanceof PDPageDestination destination) {
                    String name = "link-" + to.size();
                    float tall = page.getMediaBox().getHeight();
                    areas.addRegion(
                            name,
                            new Rectangle2D.Double(
                                    link.getRectangle().getLowerLeftX(),
                                    tall - link.getRectangle().getUpperRightY(),
                                    link.getRectangle().getWidth(),
                                    link.getRectangle().getHeight()));
                    to.put(name, number(destination.getPage().getCOSObject()));
                }
            }
            areas.extractRegions(page);
            to.forEach((name, number) -> links.add(new Leads(
                    number(page.getCOSObject()),
                    areas.getTextForRegion(name).replaceAll("\\s+", " ").strip(),
                    number)));
        }
        return links;
    }

    private int number(COSDictionary page) {
        return Objects.requireNonNull(numbers.get(page));
    }

    /**
     * A part of the tree of tags.
     *
     * @param kind such as {@code LI}
     * @param pages on which something of it stands, in their order
     * @param alt what a drawing shows, in words
     * @param at where it begins, in points from the top of its page, a thousand for each page; less than nothing where
     *     there is no text in it
     * @param text all that is in it, in the order in which it is read aloud
     */
    record Tag(String kind, List<Integer> pages, String alt, String text, double at, List<Tag> parts) {
        void walk(Consumer<Tag> each) {
            each.accept(this);
            parts.forEach(part -> part.walk(each));
        }
    }

    private final Map<Integer, Map<Integer, String>> marked = new TreeMap<>();

    /** What stands in a piece of a page that a tag names by its number. */
    private String marked(int page, int mark) {
        return marked.computeIfAbsent(page, it -> {
                    Map<Integer, String> texts = new TreeMap<>();
                    try {
                        PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
                        extractor.processPage(document.getPage(page - 1));
                        extractor.getMarkedContents().forEach(content -> collect(page, content, texts));
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                    return texts;
                })
                .getOrDefault(mark, "");
    }

    private final Map<Integer, Map<Integer, Double>> tops = new TreeMap<>();

    private void begun(int page, int mark, double[] where) {
        Double top = tops.getOrDefault(page, Map.of()).get(mark);
        if (top != null && Double.isNaN(where[0])) {
            where[0] = page * 1000 + top;
        }
    }

    private void collect(int page, PDMarkedContent content, Map<Integer, String> to) {
        StringBuilder text = new StringBuilder();
        for (Object each : content.getContents()) {
            if (each instanceof TextPosition letter) {
                text.append(letter.getUnicode());
                if (!letter.getUnicode().isBlank()) {
                    tops.computeIfAbsent(page, it -> new TreeMap<>())
                            .putIfAbsent(content.getMCID(), (double) letter.getYDirAdj());
                }
            } else if (each instanceof PDMarkedContent inner) {
                collect(page, inner, to);
            }
        }
        if (content.getMCID() >= 0) {
            to.merge(content.getMCID(), text.toString(), String::concat);
        }
    }

    Tag tags() {
        COSDictionary root =
                document.getDocumentCatalog().getStructureTreeRoot().getCOSObject();
        return tag(root, 0);
    }

    private Tag tag(COSDictionary element, int page) {
        COSBase own = element.getDictionaryObject(COSName.PG);
        int at = own instanceof COSDictionary its ? number(its) : page;
        List<Tag> parts = new ArrayList<>();
        SortedSet<Integer> pages = new TreeSet<>();
        StringBuilder text = new StringBuilder();
        double[] where = {Double.NaN};
        kids(element.getDictionaryObject(COSName.K), at, parts, pages, text, where);
        parts.forEach(part -> pages.addAll(part.pages()));
        return new Tag(
                element.getNameAsString(COSName.S, ""),
                List.copyOf(pages),
                element.getString(COSName.ALT, ""),
                text.toString(),
                Double.isNaN(where[0])
                        ? parts.stream()
                                .mapToDouble(Tag::at)
                                .filter(it -> it >= 0)
                                .findFirst()
                                .orElse(-1)
                        : where[0],
                parts);
    }

    private void kids(COSBase kids, int page, List<Tag> parts, Set<Integer> pages, StringBuilder text, double[] where) {
        if (kids instanceof COSArray array) {
            for (COSBase kid : array) {
                kids(kid instanceof COSObject object ? object.getObject() : kid, page, parts, pages, text, where);
            }
        } else if (kids instanceof COSInteger mark) {
            pages.add(page);
            text.append(marked(page, mark.intValue()));
            begun(page, mark.intValue(), where);
        } else if (kids instanceof COSDictionary kid) {
            if (kid.containsKey(COSName.MCID)) {
                COSBase own = kid.getDictionaryObject(COSName.PG);
                int at = own instanceof COSDictionary its ? number(its) : page;
                pages.add(at);
                text.append(marked(at, kid.getInt(COSName.MCID)));
                begun(at, kid.getInt(COSName.MCID), where);
            } else if (kid.containsKey(COSName.S)) {
                Tag part = tag(kid, page);
                parts.add(part);
                text.append(part.text());
            }
        }
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
