package bayfolio.document;

import bayfolio.drawing.Drawing;

/**
 * A small drawing of a thing: where it is, or how it looks in one of its states.
 *
 * @param name of its file, without ending
 * @param state {@code on} or {@code open}, {@code off} or {@code shut}; {@code normal} of what is
 *     read, {@code levels} of a tank; empty where it shows the place
 * @param title what is seen, for people who cannot see it
 */
public record Sketch(String name, String state, String title, Drawing drawing) {
    /** Whether it shows a state that a step may call by another word. */
    public boolean shows(String other) {
        return off(state) == off(other) && !state.isEmpty() && !other.isEmpty();
    }

    private static boolean off(String state) {
        return state.equals("off") || state.equals("shut");
    }
}
