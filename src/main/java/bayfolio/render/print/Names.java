package bayfolio.render.print;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.pdmodel.PDDestinationNameTreeNode;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Places in a PDF by the names that the page of HTML had for them, so that a link may lead to one of them: {@code
 * book-a4.pdf#nameddest=do_level}.
 *
 * @see <a href="https://pdfa.org/resource/iso-32000-2/">ISO 32000-2, 12.3.2.4</a>
 */
final class Names {
    private Names() {}

    /** The engine makes a bookmark of each, in the order of the page, and forgets the names. */
    static void give(PDDocument document, Document page) throws IOException {
        PDOutlineNode outline = document.getDocumentCatalog().getDocumentOutline();
        if (outline == null) {
            return;
        }
        List<PDOutlineItem> bookmarks = new ArrayList<>();
        collect(outline, bookmarks);
        NodeList named = page.getElementsByTagName("bookmark");
        if (named.getLength() != bookmarks.size()) {
            throw new IllegalStateException(
                    named.getLength() + " places are named, and " + bookmarks.size() + " bookmarks were made of them");
        }
        Map<String, PDPageDestination> names = new TreeMap<>();
        for (int i = 0; i < bookmarks.size(); i++) {
            String name = ((Element) named.item(i)).getAttribute("href").substring(1);
            if (bookmarks.get(i).getDestination() instanceof PDPageDestination to) {
                names.put(name, to);
            }
        }
        PDDestinationNameTreeNode tree = new PDDestinationNameTreeNode();
        tree.setNames(names);
        PDDocumentNameDictionary all = new PDDocumentNameDictionary(document.getDocumentCatalog());
        all.setDests(tree);
        document.getDocumentCatalog().setNames(all);
    }

    private static void collect(PDOutlineNode outline, List<PDOutlineItem> to) {
        for (PDOutlineItem item : outline.children()) {
            to.add(item);
            collect(item, to);
        }
    }

    /** Those that lead to a place on a page. */
    static Map<String, PDPageXYZDestination> of(PDDocument document) throws IOException {
        Map<String, PDPageXYZDestination> names = new TreeMap<>();
        PDDocumentNameDictionary all = document.getDocumentCatalog().getNames();
        if (all != null && all.getDests() != null) {
            all.getDests().getNames().forEach((name, to) -> {
                if (to instanceof PDPageXYZDestination place) {
                    names.put(name, place);
                }
            });
        }
        return names;
    }
}
