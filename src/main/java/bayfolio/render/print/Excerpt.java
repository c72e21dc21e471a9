package bayfolio.render.print;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.multipdf.PDFMergerUtility;
import org.apache.pdfbox.multipdf.Splitter;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDObjectReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionURI;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;

/** A few pages of a book behind a sheet that tells where they go: tagged, and fit to be kept, as the book is. */
final class Excerpt {
    private Excerpt() {}

    /**
     * @param sheet whose title and day the file has
     * @param pages of the book, in their order
     * @param source of what it is made, see {@link Pdf#source}
     */
    static byte[] of(byte[] sheet, byte[] book, List<Exchange.Pages> pages, String source) throws IOException {
        List<PDDocument> parts = new ArrayList<>();
        try (PDDocument front = Loader.loadPDF(sheet);
                PDDocument whole = Loader.loadPDF(book)) {
            withoutLinks(whole);
            PDFMergerUtility merger = new PDFMergerUtility();
            for (Exchange.Pages run : pages) {
                Splitter splitter = new Splitter();
                splitter.setStartPage(run.first());
                splitter.setEndPage(run.last());
                splitter.setSplitAtPage(run.count());
                for (PDDocument part : splitter.split(whole)) {
                    parts.add(part);
                    withoutTornTables(part.getDocumentCatalog().getStructureTreeRoot());
                    merger.appendDocument(front, part);
                }
            }
            Pdf.name(front, source);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            front.save(bytes, Pdf.SMALL);
            return bytes.toByteArray();
        } finally {
            for (PDDocument part : parts) {
                part.close();
            }
        }
    }

    /** It is printed, and most of what they lead to is not in it. */
    private static void withoutLinks(PDDocument book) throws IOException {
        Set<COSBase> gone = Collections.newSetFromMap(new IdentityHashMap<>());
        for (PDPage page : book.getPages()) {
            List<PDAnnotation> stay = new ArrayList<>();
            for (PDAnnotation annotation : page.getAnnotations()) {
                if (annotation instanceof PDAnnotationLink link && !(link.getAction() instanceof PDActionURI)) {
                    gone.add(annotation.getCOSObject());
                } else {
                    stay.add(annotation);
                }
            }
            page.setAnnotations(stay);
        }
        withoutReferences(book.getDocumentCatalog().getStructureTreeRoot(), gone);
    }

    private static void withoutReferences(PDStructureNode node, Set<COSBase> gone) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                withoutReferences(element, gone);
            } else if (kid instanceof PDObjectReference reference
                    && reference.getReferencedObject() != null
                    && gone.contains(reference.getReferencedObject().getCOSObject())) {
                ((PDStructureElement) node).removeKid(reference);
            }
        }
    }

    /** Of a table whose rows are all on other pages, its empty head and foot would stay. */
    private static void withoutTornTables(PDStructureNode node) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                if (element.getStructureType().equals(StandardStructureTypes.TABLE) && !hasRows(element)) {
                    node.removeKid(element);
                } else {
                    withoutTornTables(element);
                }
            }
        }
    }

    private static boolean hasRows(PDStructureElement table) {
        return table.getKids().stream()
                .anyMatch(kid -> kid instanceof PDStructureElement part
                        && (part.getStructureType().equals(StandardStructureTypes.T_BODY)
                                || part.getStructureType().equals(StandardStructureTypes.TR)));
    }
}
