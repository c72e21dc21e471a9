package bayfolio.model;

/** How a part that is moved stands, or how its lamp is, seen by who stands before it. */
public enum Pose {
    UP,
    DOWN,
    LEFT,
    RIGHT,
    /** From side to side. */
    LEVEL,
    /** In line with its pipe. */
    ALONG,
    /** Across its pipe. */
    ACROSS,
    /** Pushed in, or flush. */
    IN,
    /** Pulled out, or standing out. */
    OUT,
    MIDDLE,
    LIT,
    DARK,
    BLINKING
}
