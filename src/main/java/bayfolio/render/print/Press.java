package bayfolio.render.print;

import bayfolio.render.Means;
import bayfolio.render.Media;
import bayfolio.render.html.View;
import bayfolio.source.Hidden;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import bayfolio.template.Template;
import bayfolio.template.TemplateProblem;
import bayfolio.typeface.Face;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** Fills templates of paper and lays them out. They are XML, so that a tag that is left open is told and not guessed at. */
final class Press {
    /** What no day was given for says that it was made then: the same input gives the same bytes. */
    private static final LocalDate NO_DAY = LocalDate.of(2000, 1, 1);

    private static final Pdf NOTHING = new Pdf(new byte[0], 0);

    private static final String SVG = "http://www.w3.org/2000/svg";

    private static final List<String> HEADINGS = List.of("h2", "h3", "h4");

    /** What stands between a heading and what is below it, and takes no room there. */
    private static final List<String> RUNNING = List.of("section", "title");

    private static final String KEPT = "kept";

    private static final String CHANGED = " changed";

    /** Of what stands below a heading, what may be tall: steps, and what is drawn. */
    private static final List<String> KEPT_WITH = List.of("ol", "figure");

    private final Means means;
    private final List<TemplateProblem> complaints = new ArrayList<>();

    Press(Means means) {
        this.means = means;
    }

    List<TemplateProblem> complaints() {
        synchronized (complaints) {
            return complaints.stream().distinct().toList();
        }
    }

    private void complain(TemplateProblem complaint) {
        synchronized (complaints) {
            complaints.add(complaint);
        }
    }

    void complain(Form form, String what) {
        complain(
                new TemplateProblem(TemplateProblem.Kind.MALFORMED, Place.whole(form.file()), "", what, List.of(), ""));
    }

    /** A template of the theme, and where it is written. */
    record Form(SourceFile file, Template template) {}

    Form form(String name) {
        SourceFile file = means.theme()
                .template("print/" + name)
                .orElseThrow(
                        () -> new IllegalArgumentException("the theme has no template `print/" + name + ".mustache`"));
        return new Form(file, Template.compile(file, Template.Escape.HTML, means.theme()::template, this::complain));
    }

    /** What is laid out, as text. */
    String filled(Form form, View names) {
        return form.template().fill(names.names(), this::complain).text();
    }

    /**
     * The same as was given out last, where that was made of the same.
     *
     * @param before that file, if there was one
     */
    byte[] pdf(Form form, String filled, Media media, Optional<byte[]> before) {
        return before.filter(file -> isOf(file, filled, media))
                .orElseGet(() -> pdf(form, filled, media).bytes());
    }

    /** Whether a file was made of this. */
    boolean isOf(byte[] file, String filled, Media media) {
        return Pdf.isOf(file, Pdf.source(filled, photos(media)));
    }

    /** @param filled see {@link #filled}; without pages where something is wrong with it, which is told then */
    Pdf pdf(Form form, String filled, Media media) {
        Document page;
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setNamespaceAware(true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            page = factory.newDocumentBuilder().parse(new InputSource(new StringReader(filled)));
        } catch (SAXParseException e) {
            complain(form, "what it gives is no XML in line " + e.getLineNumber() + ": " + e.getMessage());
            return NOTHING;
        } catch (SAXException | ParserConfigurationException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        OptionalInt lacking = Face.lacking(page.getDocumentElement().getTextContent());
        if (lacking.isPresent()) {
            complain(form, "paper has no letter for " + Hidden.name(lacking.getAsInt()));
            return NOTHING;
        }
        finish(page);
        return Pdf.of(
                page,
                Pdf.source(filled, photos(media)),
                photos(media),
                means.printing().day().orElse(NO_DAY));
    }

    private static Map<String, byte[]> photos(Media media) {
        Map<String, byte[]> photos = new HashMap<>();
        media.photographs()
                .forEach((id, photograph) ->
                        photograph.sizes().forEach((size, bytes) -> photos.put(photograph.file(id, size), bytes)));
        return photos;
    }

    /** What the engine wants otherwise than browsers do. */
    private static void finish(Document page) {
        for (Element drawing : all(page, SVG, "svg")) {
            drawing.setAttribute("alt", drawing.getAttribute("aria-label"));
            drawing.setAttribute("font-family", "text, signs");
            drawing.setAttribute("color", "#000");
        }
        for (Element link : all(page, null, "a")) {
            String href = link.getAttribute("href");
            if (href.isEmpty()) {
                unwrap(link);
            } else if (href.startsWith("#")) {
                link.setAttribute("class", (link.getAttribute("class") + " see").strip());
            }
        }
        all(page, null, "p").stream()
                .filter(it -> it.getAttribute("class").startsWith("mark "))
                .forEach(Press::inOneLine);
        HEADINGS.forEach(name -> all(page, null, name).forEach(Press::keep));
        Element head = all(page, null, "head").get(0);
        Element bookmarks = page.createElementNS(null, "bookmarks");
        Element chapter = bookmarks;
        for (Element heading : all(page, null, "*")) {
            String name = heading.getLocalName();
            String id = heading.getAttribute("id");
            if (!id.isEmpty() && (name.equals("h1") || name.equals("h2"))) {
                Element bookmark = page.createElementNS(null, "bookmark");
                bookmark.setAttribute("name", heading.getTextContent().strip());
                bookmark.setAttribute("href", "#" + id);
                (name.equals("h1") ? bookmarks : chapter).appendChild(bookmark);
                chapter = name.equals("h1") ? bookmark : chapter;
            }
        }
        if (bookmarks.hasChildNodes()) {
            head.appendChild(bookmarks);
        }
    }

    /** Marks that follow each other are read in one line. */
    private static void inOneLine(Element mark) {
        Document page = mark.getOwnerDocument();
        Node before = mark.getPreviousSibling();
        while (before != null && !(before instanceof Element)) {
            before = before.getPreviousSibling();
        }
        Element line;
        if (before instanceof Element element && element.getAttribute("class").startsWith("marks")) {
            line = element;
        } else {
            line = page.createElementNS(null, "p");
            line.setAttribute("class", "marks");
            mark.getParentNode().insertBefore(line, mark);
        }
        Element words = page.createElementNS(null, "span");
        String kind = mark.getAttribute("class");
        if (kind.endsWith(CHANGED)) {
            // The bar stands at the edge of the page, beside the line.
            line.setAttribute("class", "marks" + CHANGED);
            kind = kind.substring(0, kind.length() - CHANGED.length());
        }
        words.setAttribute("class", kind);
        while (mark.getFirstChild() != null) {
            words.appendChild(mark.getFirstChild());
        }
        line.appendChild(words);
        line.appendChild(page.createTextNode(" "));
        mark.getParentNode().removeChild(mark);
    }

    /** A heading stays with the first step below it, or with what is drawn there, however tall that is. */
    private static void keep(Element heading) {
        if (heading.getParentNode() instanceof Element around
                && around.getAttribute("class").equals(KEPT)) {
            return;
        }
        List<Element> kept = new ArrayList<>(List.of(heading));
        Element next = next(heading);
        while (next != null
                && (HEADINGS.contains(next.getLocalName()) || RUNNING.contains(next.getAttribute("class")))) {
            kept.add(next);
            next = next(next);
        }
        if (next == null || !KEPT_WITH.contains(next.getLocalName())) {
            return;
        }
        Element wrap = heading.getOwnerDocument().createElementNS(null, "div");
        wrap.setAttribute("class", KEPT);
        heading.getParentNode().insertBefore(wrap, heading);
        kept.forEach(wrap::appendChild);
        if (next.getLocalName().equals("ol")) {
            Element first = (Element) next.cloneNode(false);
            wrap.appendChild(first);
            Element step = first(next);
            if (step != null) {
                first.appendChild(step);
            }
            if (first(next) == null) {
                next.getParentNode().removeChild(next);
            }
        } else {
            wrap.appendChild(next);
        }
    }

    private static @Nullable Element next(Element element) {
        return from(element.getNextSibling());
    }

    private static @Nullable Element first(Element element) {
        return from(element.getFirstChild());
    }

    /** The first element from a node on, where no text stands before it. */
    private static @Nullable Element from(@Nullable Node node) {
        Node at = node;
        while (at != null && !(at instanceof Element)) {
            if (!at.getTextContent().isBlank()) {
                return null;
            }
            at = at.getNextSibling();
        }
        return (Element) at;
    }

    private static void unwrap(Element link) {
        Node parent = link.getParentNode();
        while (link.getFirstChild() != null) {
            parent.insertBefore(link.getFirstChild(), link);
        }
        parent.removeChild(link);
    }

    private static List<Element> all(Document page, @Nullable String space, String name) {
        NodeList found = page.getElementsByTagNameNS(space == null ? "*" : space, name);
        List<Element> all = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            Element element = (Element) found.item(i);
            if (space != null || element.getNamespaceURI() == null) {
                all.add(element);
            }
        }
        return all;
    }
}
