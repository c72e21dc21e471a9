package bayfolio.publish;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** All words in a PDF, read by another program than made it. */
final class PdfWords {
    private PdfWords() {}

    /** The text of a PDF, what it says of itself, and every other string in it. */
    static String of(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            StringBuilder all = new StringBuilder(new PDFTextStripper().getText(document));
            all.append(new String(document.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8));
            for (COSObjectKey key : document.getDocument().getXrefTable().keySet()) {
                strings(document.getDocument().getObjectFromPool(key).getObject(), all);
            }
            return all.toString();
        }
    }

    private static void strings(COSBase value, StringBuilder all) {
        if (value instanceof COSString text) {
            all.append('\n').append(text.getString());
        } else if (value instanceof COSArray array) {
            array.forEach(each -> strings(each, all));
        } else if (value instanceof COSDictionary dictionary) {
            dictionary.getValues().forEach(each -> strings(each, all));
        }
    }
}
