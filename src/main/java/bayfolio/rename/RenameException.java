package bayfolio.rename;

import bayfolio.finding.Finding;
import java.util.List;

/** A name that cannot be given; nothing is changed. The message says in one sentence why. */
public final class RenameException extends Exception {
    private static final long serialVersionUID = 1L;

    private final boolean ofTheCall;
    private final transient List<Finding> findings;
    private final transient List<Against> against;

    private RenameException(boolean ofTheCall, String sentence, List<Finding> findings, List<Against> against) {
        super(sentence);
        this.ofTheCall = ofTheCall;
        this.findings = List.copyOf(findings);
        this.against = List.copyOf(against);
    }

    /** Where what was asked for makes no sense. */
    static RenameException ofTheCall(String sentence) {
        return new RenameException(true, sentence, List.of(), List.of());
    }

    /** Where the new name is not free, or something else is so. */
    static RenameException of(String sentence) {
        return new RenameException(false, sentence, List.of(), List.of());
    }

    /** Where something is wrong in the files, or would be. */
    static RenameException of(String sentence, List<Finding> findings) {
        return new RenameException(false, sentence, findings, List.of());
    }

    /** Where the files are written so that it cannot be. */
    static RenameException against(String sentence, List<Against> against) {
        return new RenameException(false, sentence, List.of(), against);
    }

    public boolean isOfTheCall() {
        return ofTheCall;
    }

    /** What is wrong, or would be; may be empty. */
    public List<Finding> findings() {
        return findings;
    }

    /** Places that are against it; may be empty. */
    public List<Against> against() {
        return against;
    }
}
