package bayfolio.render.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which leaves of a book in a binder are taken out and which are put in. A leaf has two pages, the first of them odd.
 *
 * @param runs leaves that follow each other, in their order
 * @param pages how many the new book has
 */
record Exchange(List<Run> runs, int pages) {
    Exchange {
        runs = List.copyOf(runs);
    }

    /**
     * Leaves that lie together.
     *
     * @param out pages that were there; nothing where the new book is longer
     * @param in pages that come there; nothing where it is shorter
     */
    record Run(Optional<Pages> out, Optional<Pages> in) {}

    /** Numbers of pages, both of them among them. */
    record Pages(int first, int last) {
        int count() {
            return last - first + 1;
        }

        @Override
        public String toString() {
            return first == last ? Integer.toString(first) : first + "\u2013" + last;
        }
    }

    /** @param before digests of the pages that are in the binder */
    static Exchange of(List<String> before, List<String> now) {
        List<Run> runs = new ArrayList<>();
        int leaves = (Math.max(before.size(), now.size()) + 1) / 2;
        int from = 0;
        for (int leaf = 0; leaf <= leaves; leaf++) {
            if (leaf == leaves || leaf(before, leaf).equals(leaf(now, leaf))) {
                if (from < leaf) {
                    runs.add(new Run(pages(before, from, leaf), pages(now, from, leaf)));
                }
                from = leaf + 1;
            }
        }
        return new Exchange(runs, now.size());
    }

    private static List<String> leaf(List<String> pages, int leaf) {
        return pages.subList(Math.min(pages.size(), 2 * leaf), Math.min(pages.size(), 2 * leaf + 2));
    }

    private static Optional<Pages> pages(List<String> pages, int from, int to) {
        int last = Math.min(pages.size(), 2 * to);
        return last > 2 * from ? Optional.of(new Pages(2 * from + 1, last)) : Optional.empty();
    }

    /** The pages that are printed, in their order. */
    List<Pages> printed() {
        return runs.stream().flatMap(run -> run.in().stream()).toList();
    }

    /** Whether nothing of the old book stays. */
    boolean isAll() {
        return printed().stream().mapToInt(Pages::count).sum() == pages;
    }
}
