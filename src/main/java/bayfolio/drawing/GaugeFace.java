package bayfolio.drawing;

import bayfolio.model.Gauge;
import bayfolio.model.Pose;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is read, as it looks when all is well: a lamp, lamps side by side, bars, a needle, figures in a window. A field of
 * {@link Face#SIDE} each way.
 */
public final class GaugeFace {
    private static final double SIDE = Face.SIDE;
    private static final double MIDDLE = SIDE / 2;
    private static final double LETTERS = 16;

    /** Smaller ones are not read on a phone. */
    private static final double SMALL = 11;

    private final List<Mark> marks = new ArrayList<>();
    private final List<String> steps;
    private final String reads;

    private GaugeFace(List<String> steps, String reads) {
        this.steps = steps;
        this.reads = reads;
    }

    /**
     * @param steps the marks on it, from empty to full
     * @param reads the mark at which it stands, or what stands in its window; may be empty
     * @param poses of its lamp
     * @return nothing where it is not known what there is to be seen
     */
    public static Optional<Drawing> of(Gauge.Display display, List<String> steps, String reads, Set<Pose> poses) {
        GaugeFace face = new GaugeFace(steps, reads);
        if (reads.isEmpty() && display != Gauge.Display.LAMP) {
            return Optional.empty();
        }
        switch (display) {
            case LAMP -> face.lamp(poses);
            case LAMPS -> face.lamps();
            case BARS -> face.bars();
            case NEEDLE -> face.needle();
            case FIGURES -> face.figures();
        }
        return face.marks.isEmpty() ? Optional.empty() : Optional.of(new Drawing(SIDE, SIDE, face.marks));
    }

    private void lamp(Set<Pose> poses) {
        if (poses.isEmpty()) {
            return;
        }
        double y = reads.isEmpty() ? MIDDLE : MIDDLE - 12;
        marks.addAll(Face.lamp(MIDDLE, y, 20, poses));
        if (!reads.isEmpty()) {
            label(reads, MIDDLE, SIDE - 14, SIDE - 8);
        }
    }

    private void lamps() {
        double apart = SIDE / Math.max(1, steps.size());
        for (int i = 0; i < steps.size(); i++) {
            double x = apart * (i + 0.5);
            boolean here = steps.get(i).equals(reads);
            marks.addAll(Face.lamp(x, 46, Math.min(9, apart / 3), here ? Set.of(Pose.LIT) : Set.of(Pose.DARK)));
        }
        for (int i : inTurn()) {
            label(steps.get(i), apart * (i + 0.5), 88, steps.size() > 5 ? 2 * apart : apart - 2);
        }
    }

    private void bars() {
        double tall = (SIDE - 12) / Math.max(1, steps.size());
        int upTo = steps.indexOf(reads);
        for (int i = 0; i < steps.size(); i++) {
            double y = SIDE - 6 - (i + 1) * tall;
            marks.add(new Mark.Box(
                    "", 14, y + 2, 46, Math.max(2, tall - 4), 2, i <= upTo ? Mark.Fill.HERE : Mark.Fill.NONE, false));
        }
        for (int i : inTurn()) {
            label(steps.get(i), 91, SIDE - 6 - (i + 0.5) * tall + LETTERS * 0.3, 54);
        }
    }

    private void needle() {
        if (steps.size() < 2) {
            return;
        }
        double y = 84;
        double[] arc = new double[2 * 25];
        for (int i = 0; i < 25; i++) {
            arc[2 * i] = MIDDLE + across(i / 24.0) * 40;
            arc[2 * i + 1] = y + down(i / 24.0) * 40;
        }
        marks.add(Mark.Path.through(arc));
        for (int i = 0; i < steps.size(); i++) {
            double part = i / (steps.size() - 1.0);
            marks.add(Mark.Path.through(
                    MIDDLE + across(part) * 34, y + down(part) * 34, MIDDLE + across(part) * 44, y + down(part) * 44));
        }
        int stands = steps.indexOf(reads);
        if (stands >= 0) {
            double part = stands / (steps.size() - 1.0);
            marks.add(Mark.Path.of(
                    true,
                    Mark.Fill.HERE,
                    MIDDLE + across(part) * 33,
                    y + down(part) * 33,
                    MIDDLE - down(part) * 5,
                    y + across(part) * 5,
                    MIDDLE + down(part) * 5,
                    y - across(part) * 5));
            marks.add(new Mark.Round("", MIDDLE, y, 6, Mark.Fill.HERE));
        }
        for (int i : inTurn()) {
            double part = i / (steps.size() - 1.0);
            // The ends stand below the arc, where there is room.
            boolean end = i == 0 || i == steps.size() - 1;
            label(
                    steps.get(i),
                    MIDDLE + across(part) * (end ? 42 : 54),
                    end ? y + LETTERS + 4 : y + down(part) * 54 + 4,
                    end ? 50 : 36);
        }
    }

    private static double across(double part) {
        return -Math.cos(Math.PI * part);
    }

    private static double down(double part) {
        return -Math.sin(Math.PI * part);
    }

    private void figures() {
        marks.add(new Mark.Box("", 8, 34, SIDE - 16, 52, 8, Mark.Fill.NONE, false));
        double size = Math.min(34, fitting(reads, SIDE - 32));
        marks.add(new Mark.Label(reads, MIDDLE, MIDDLE + size * 0.32, size));
    }

    /** Where it stands first, then the ends, then the others: of those that would lie on another the later ones are left out. */
    private Set<Integer> inTurn() {
        Set<Integer> turns = new LinkedHashSet<>();
        if (steps.contains(reads)) {
            turns.add(steps.indexOf(reads));
        }
        if (!steps.isEmpty()) {
            turns.add(0);
            turns.add(steps.size() - 1);
        }
        for (int i = 0; i < steps.size(); i++) {
            turns.add(i);
        }
        return turns;
    }

    private static double fitting(String words, double room) {
        return room / new Mark.Label(words, 0, 0, 1).room().width();
    }

    /** Where it would be too small, or lie on another, it is left out: the page has it in words. */
    private void label(String words, double x, double y, double room) {
        double size = Math.min(LETTERS, fitting(words, room));
        double half = new Mark.Label(words, 0, 0, size).room().width() / 2;
        Mark.Label label = new Mark.Label(words, Math.min(SIDE - half - 1, Math.max(half + 1, x)), y, size);
        boolean free = marks.stream()
                .filter(Mark.Label.class::isInstance)
                .noneMatch(other -> ((Mark.Label) other).room().overlaps(label.room()));
        if (size >= SMALL && free && !words.isEmpty() && label.room().y() >= 0) {
            marks.add(label);
        }
    }
}
