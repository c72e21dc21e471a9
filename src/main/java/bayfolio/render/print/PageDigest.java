package bayfolio.render.print;

import bayfolio.source.Digest;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.contentstream.operator.OperatorName;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * What is read on a page, and where: letters, drawings and photos. Lines at the head and at the foot of all pages, frames and
 * bars are no part of it. They are what tagged PDF calls artifacts (ISO 32000-2, 14.8.2.2).
 */
final class PageDigest {
    /** Is set when it is not set already, by a frame before. */
    private static final Set<String> STATE = Set.of(
            OperatorName.NON_STROKING_RGB,
            OperatorName.STROKING_COLOR_RGB,
            OperatorName.SET_LINE_WIDTH,
            OperatorName.SET_LINE_CAPSTYLE,
            OperatorName.SET_LINE_JOINSTYLE,
            OperatorName.SET_LINE_MITERLIMIT,
            OperatorName.SET_LINE_DASHPATTERN);

    private final Map<COSBase, byte[]> drawn = new IdentityHashMap<>();

    private PageDigest() {}

    /** Of all pages, in their order. */
    static List<String> of(PDDocument book) throws IOException {
        PageDigest pages = new PageDigest();
        List<String> all = new ArrayList<>();
        for (PDPage page : book.getPages()) {
            all.add(pages.of(page));
        }
        return all;
    }

    private String of(PDPage page) throws IOException {
        MessageDigest digest = Digest.sha256();
        PDFStreamParser tokens = new PDFStreamParser(page);
        List<Object> operands = new ArrayList<>();
        int depth = 0;
        int artifact = 0; // the depth at which one began
        for (Object token = tokens.parseNextToken(); token != null; token = tokens.parseNextToken()) {
            if (!(token instanceof Operator operator)) {
                operands.add(token);
                continue;
            }
            switch (operator.getName()) {
                case OperatorName.BEGIN_MARKED_CONTENT, OperatorName.BEGIN_MARKED_CONTENT_SEQ -> {
                    depth++;
                    if (artifact == 0 && operands.get(0).equals(COSName.ARTIFACT)) {
                        artifact = depth;
                    }
                }
                case OperatorName.END_MARKED_CONTENT -> {
                    artifact = artifact == depth ? 0 : artifact;
                    depth--;
                }
                case OperatorName.DRAW_OBJECT -> {
                    if (artifact == 0) {
                        digest.update(drawn(page, (COSName) operands.get(0)));
                    }
                }
                default -> {
                    if (artifact == 0 && !STATE.contains(operator.getName())) {
                        add(digest, operands + " " + operator.getName());
                    }
                }
            }
            operands.clear();
        }
        return Digest.of(digest);
    }

    /** A photo or a drawing; its name says nothing of it, and most stand on one page. */
    private byte[] drawn(PDPage page, COSName name) throws IOException {
        COSStream stream = page.getResources().getXObject(name).getCOSObject();
        byte[] known = drawn.get(stream);
        if (known == null) {
            try (InputStream bytes = stream.createRawInputStream()) {
                MessageDigest digest = Digest.sha256();
                digest.update(bytes.readAllBytes());
                known = digest.digest();
            }
            drawn.put(stream, known);
        }
        return known;
    }

    private static void add(MessageDigest digest, String text) {
        digest.update(text.getBytes(StandardCharsets.UTF_8));
        digest.update((byte) '\n');
    }
}
