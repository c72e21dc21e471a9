package bayfolio.render.theme;

/** There is no theme of that name, neither in the fleet folder nor built in. */
public final class UnknownThemeException extends Exception {
    private static final long serialVersionUID = 1L;

    UnknownThemeException(String name) {
        super("There is no theme `" + name + "`: no folder themes/" + name + ".");
    }
}
