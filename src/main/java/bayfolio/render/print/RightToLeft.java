package bayfolio.render.print;

import com.ibm.icu.text.ArabicShaping;
import com.ibm.icu.text.ArabicShapingException;
import com.ibm.icu.text.Bidi;
import com.ibm.icu.text.BidiRun;
import com.openhtmltopdf.bidi.BidiReorderer;
import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;

/** Text from right to left, in the order in which it is printed; by ICU, which knows the algorithm of Unicode. */
final class RightToLeft implements BidiSplitter, BidiReorderer {
    private final Bidi bidi = new Bidi();

    @Override
    public void setParagraph(String paragraph, byte direction) {
        bidi.setPara(
                paragraph, direction == RTL ? Bidi.RTL : direction == LTR ? Bidi.LTR : Bidi.LEVEL_DEFAULT_LTR, null);
    }

    @Override
    public int countTextRuns() {
        return bidi.countRuns();
    }

    @Override
    public BidiTextRun getVisualRun(int index) {
        BidiRun run = bidi.getVisualRun(index);
        return new BidiTextRun(run.getStart(), run.getLength(), run.isOddRun() ? RTL : LTR);
    }

    @Override
    public byte getBaseDirection(String paragraph) {
        return switch (Bidi.getBaseDirection(paragraph)) {
            case Bidi.LTR -> LTR;
            case Bidi.RTL -> RTL;
            default -> NEUTRAL;
        };
    }

    @Override
    public String reorderRTLTextToLTR(String text) {
        return Bidi.writeReverse(text, Bidi.DO_MIRRORING | Bidi.REMOVE_BIDI_CONTROLS);
    }

    @Override
    public String shapeText(String text) {
        return shaped(text, ArabicShaping.LETTERS_SHAPE);
    }

    @Override
    public String deshapeText(String text) {
        return shaped(text, ArabicShaping.LETTERS_UNSHAPE);
    }

    private static String shaped(String text, int letters) {
        try {
            return new ArabicShaping(letters | ArabicShaping.TEXT_DIRECTION_LOGICAL | ArabicShaping.LENGTH_GROW_SHRINK)
                    .shape(text);
        } catch (ArabicShapingException e) {
            // Longer than it may get: as it is written, it is still read.
            return text;
        }
    }

    @Override
    public boolean isLiveImplementation() {
        return true;
    }
}
