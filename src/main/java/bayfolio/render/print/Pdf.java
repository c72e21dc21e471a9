package bayfolio.render.print;

import bayfolio.typeface.Face;
import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.EnumSet;
import java.util.GregorianCalendar;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.logging.Level;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.util.Version;
import org.w3c.dom.Document;
import org.w3c.dom.Node;
import org.w3c.dom.Text;
import org.xml.sax.SAXException;

/**
 * Pages of HTML, laid out on paper: tagged for those who have them read aloud (PDF/UA-1, ISO 14289-1), and with all that is
 * needed to show them in many years (PDF/A-3, ISO 19005-3). The same pages give the same bytes.
 */
record Pdf(byte[] bytes, int pages) {
    /** By which pages name a photo: {@code photo:left-side.jpg}. */
    static final String PHOTO = "photo:";

    private static final String NOTHING_ELSE = "nothing but photos of this coach is loaded: ";

    private static final Pattern TABLE = Pattern.compile("startxref\\s+(\\d{1,9})\\s+%%EOF");

    /** What lays out pages; another version may do it otherwise. */
    private static final String ENGINES =
            Version.getVersion() + " " + PdfRendererBuilder.class.getPackage().getImplementationVersion();

    /** Letters in drawings are those of the text around them. */
    private static final Set<FSFontUseCase> IN_ALL = EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG);

    /** Tags are small and many: packed together they take a third. */
    static final CompressParameters SMALL = new CompressParameters(20_000);

    static {
        // What is wrong is asked for below.
        XRLog.listRegisteredLoggers().forEach(logger -> XRLog.setLevel(logger, Level.OFF));
    }

    /**
     * @param source of what it is made, see {@link #source}: it becomes the name of the file
     * @param photos JPEG files by the name that pages have for them
     * @param made the day that it says it was made
     * @throws IllegalStateException when the page names something that is not there, or asks for what the engine does not know
     */
    static Pdf of(Document page, String source, Map<String, byte[]> photos, LocalDate made) {
        List<String> faults = new ArrayList<>();
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.usePdfUaAccessibility(true);
        builder.usePdfAConformance(PdfAConformance.PDFA_3_A);
        builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.useUnicodeBidiSplitter(RightToLeft::new);
        builder.useUnicodeBidiReorderer(new RightToLeft());
        for (Face face : Face.values()) {
            builder.useFont(face::stream, face.family(), face.weight(), FontStyle.NORMAL, true, IN_ALL);
        }
        builder.useExternalResourceAccessControl(
                (uri, type) -> uri.startsWith(PHOTO), ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.useExternalResourceAccessControl(
                (uri, type) -> uri.startsWith(PHOTO), ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
        builder.useUriResolver((base, uri) -> uri);
        builder.useProtocolsStreamImplementation(uri -> new Photo(photos, uri), "photo");
        builder.withDiagnosticConsumer(it -> note(it, faults));
        builder.withW3cDocument(page, PHOTO);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        int pages;
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
            try (PDDocument document = renderer.getPdfDocument()) {
                same(document, source, made);
                Names.give(document, page);
                pages = document.getNumberOfPages();
                document.save(bytes, SMALL);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (!faults.isEmpty()) {
            throw new IllegalStateException("the page cannot be laid out as it is meant: " + faults);
        }
        return new Pdf(bytes.toByteArray(), pages);
    }

    /** Digest of all that a file is made of, in hexadecimal: the page, its photos, the faces, and the programs that lay it out. */
    static String source(String page, Map<String, byte[]> photos) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(ENGINES.getBytes(StandardCharsets.UTF_8));
            digest.update(page.getBytes(StandardCharsets.UTF_8));
            for (Map.Entry<String, byte[]> photo : new TreeMap<>(photos).entrySet()) {
                if (page.contains(PHOTO + photo.getKey())) {
                    digest.update(photo.getValue());
                }
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /**
     * Whether a file says that it is made of this. It is looked up where readers look for its name: in the table at the end.
     *
     * @see <a href="https://pdfa.org/resource/iso-32000-2/">ISO 32000-2, 7.5.8.2 and 14.4</a>
     */
    static boolean isOf(byte[] file, String source) {
        String end = latin(file, Math.max(0, file.length - 64), file.length);
        Matcher table = TABLE.matcher(end);
        if (!table.find()) {
            return false;
        }
        int at = Integer.parseInt(table.group(1));
        return at < file.length
                && latin(file, at, Math.min(file.length, at + 1024))
                        .contains("<" + source.toUpperCase(Locale.ROOT) + ">");
    }

    private static String latin(byte[] file, int from, int to) {
        return new String(file, from, to - from, StandardCharsets.ISO_8859_1);
    }

    private static void note(Diagnostic diagnostic, List<String> faults) {
        if (diagnostic.getLevel().intValue() >= Level.WARNING.intValue()) {
            faults.add(diagnostic.getFormattedMessage());
        }
    }

    /** Nothing in it tells when or where it was made. */
    private static void same(PDDocument document, String source, LocalDate made) throws IOException {
        Calendar day = GregorianCalendar.from(made.atStartOfDay(ZoneOffset.UTC));
        day.setTimeZone(TimeZone.getTimeZone("UTC"));
        PDDocumentInformation told = document.getDocumentInformation();
        told.setCreationDate(day);
        told.setModificationDate(day);
        name(document, source);
        PDMetadata metadata = document.getDocumentCatalog().getMetadata();
        String xmp = written(metadata.toByteArray())
                .replaceAll(
                        "(<xmp:(?:CreateDate|ModifyDate|MetadataDate)>)[^<]*",
                        "$1" + String.format(Locale.ROOT, "%sT00:00:00Z", made));
        metadata.importXMPMetadata(xmp.getBytes(StandardCharsets.UTF_8));
    }

    /** What it is made of becomes the name of the file. */
    static void name(PDDocument document, String source) {
        COSArray id = new COSArray();
        id.add(new COSString(HexFormat.of().parseHex(source)));
        id.add(new COSString(HexFormat.of().parseHex(source)));
        document.getDocument().getTrailer().setItem(COSName.ID, id);
    }

    /** XML as the program's own Java writes it: another writer that lies beside it would set spaces otherwise. */
    private static String written(byte[] xmp) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setNamespaceAware(true);
            Document read = factory.newDocumentBuilder().parse(new ByteArrayInputStream(xmp));
            withoutBlanks(read.getDocumentElement());
            Transformer writer = TransformerFactory.newDefaultInstance().newTransformer();
            writer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
            StringWriter text = new StringWriter();
            writer.transform(new DOMSource(read), new StreamResult(text));
            return text.toString();
        } catch (IOException | ParserConfigurationException | SAXException | TransformerException e) {
            throw new IllegalStateException("the engine wrote metadata that are no XML", e);
        }
    }

    private static void withoutBlanks(Node node) {
        Node child = node.getFirstChild();
        while (child != null) {
            Node next = child.getNextSibling();
            if (child instanceof Text text && text.getData().isBlank()) {
                node.removeChild(child);
            } else {
                withoutBlanks(child);
            }
            child = next;
        }
    }

    private record Photo(Map<String, byte[]> photos, String uri) implements FSStream {
        @Override
        public InputStream getStream() {
            byte[] bytes = photos.get(uri.substring(PHOTO.length()));
            if (bytes == null) {
                throw new IllegalStateException(NOTHING_ELSE + uri);
            }
            return new ByteArrayInputStream(bytes);
        }

        @Override
        public Reader getReader() {
            return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
        }
    }
}
