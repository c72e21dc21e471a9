package bayfolio.issue;

/** An edition cannot be issued; its message is one sentence for people. */
public final class IssueException extends Exception {
    private static final long serialVersionUID = 1;

    public IssueException(String message) {
        super(message);
    }
}
