package bayfolio.drawing;

import java.util.List;

/** What is drawn, in a field of its own units. */
public record Drawing(double width, double height, List<Mark> marks) {
    public Drawing {
        marks = List.copyOf(marks);
    }
}
