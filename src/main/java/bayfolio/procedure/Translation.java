package bayfolio.procedure;

import bayfolio.source.SourceFile;

/**
 * A script in another language, as written. Headings of its form, the signal words and `**Safe to stop:**` stay as in the
 * script, since they are marks and not words; pages say them in the words of their language.
 *
 * @param language of the folder that it is in: {@code de}
 * @param form of the script that it translates
 * @param firstLine of the file, on which the body begins
 */
public record Translation(
        String language, Form form, TranslationHead head, SourceFile file, String body, int firstLine) {
    public String of() {
        return head.facts().get(TranslationHead.OF);
    }

    /** Whether it is of the text as it is now. */
    public boolean isOf(Script script) {
        return head.facts().get(TranslationHead.SOURCE).strip().equals(script.digest());
    }
}
