package bayfolio.render.print;

/** What is printed on; lengths in millimeters. */
enum Paper {
    /** ISO 216. */
    A4("a4", 210, 297),
    /** ANSI Y14.1, size A. */
    LETTER("letter", 215.9, 279.4);

    private final String id;
    private final double width;
    private final double height;

    Paper(String id, double width, double height) {
        this.id = id;
        this.width = width;
        this.height = height;
    }

    /** As files are named. */
    String id() {
        return id;
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    /** As styles have it. */
    String size() {
        return width + "mm " + height + "mm";
    }
}
