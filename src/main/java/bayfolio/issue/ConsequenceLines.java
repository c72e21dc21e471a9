package bayfolio.issue;

import bayfolio.issue.Consequence.Act;
import bayfolio.issue.Consequence.Redo;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What follows from a change, in short: a line for each kind of it. */
final class ConsequenceLines {
    /** More than these are counted. */
    private static final int MOST = 6;

    private ConsequenceLines() {}

    static String of(Consequences consequences) {
        return labels(consequences)
                + line(
                        "printed",
                        consequences
                                .of(Consequence.Printed.class)
                                .map(ConsequenceLines::printed)
                                .toList())
                + pictures(consequences, Redo.TAKE_AGAIN, "take again")
                + pictures(consequences, Redo.LOOK_AT, "look at")
                + line(
                        "look up",
                        consequences
                                .of(Consequence.LookUp.class)
                                .map(it -> it.of() + ", " + it.why())
                                .toList(),
                        "; ")
                + line(
                        "translate",
                        consequences
                                .of(Consequence.Translation.class)
                                .map(it -> it.language() + " " + it.of())
                                .toList())
                + line(
                        "read again",
                        consequences
                                .of(Consequence.Reading.class)
                                .map(Consequence.Reading::page)
                                .filter(page -> !consequences.changed().pages().contains(page))
                                .toList())
                + line(
                        "no longer there",
                        consequences
                                .of(Consequence.Link.class)
                                .filter(Consequence.Link::gone)
                                .map(Consequence.Link::page)
                                .toList())
                + line(
                        "new",
                        consequences
                                .of(Consequence.Link.class)
                                .filter(it -> !it.gone())
                                .map(Consequence.Link::page)
                                .toList());
    }

    private static String printed(Consequence.Printed printed) {
        return printed.paper().words()
                + (printed.on().isEmpty()
                        ? ""
                        : printed.on().stream()
                                .map(it -> it.size() + " " + it.words())
                                .collect(Collectors.joining("; ", " (pages: ", ")")));
    }

    private static String labels(Consequences consequences) {
        return Stream.of(Act.values())
                .map(act -> line(
                        switch (act) {
                            case SCRAPE_OFF -> "scrape off";
                            case STICK_ON -> "stick on";
                            case PRINT_ANEW -> "print anew";
                        },
                        consequences
                                .of(Consequence.Label.class)
                                .filter(it -> it.act() == act)
                                .map(ConsequenceLines::label)
                                .toList(),
                        "; "))
                .collect(Collectors.joining());
    }

    private static String label(Consequence.Label label) {
        return "label `" + label.thing().name() + "`" + (label.place().isEmpty() ? "" : ", " + label.place());
    }

    private static String pictures(Consequences consequences, Redo redo, String what) {
        return line(
                what,
                Stream.concat(
                                consequences
                                        .of(Consequence.Picture.class)
                                        .filter(it -> it.redo() == redo)
                                        .map(it -> "photo " + it.photo()),
                                consequences
                                        .of(Consequence.Scene.class)
                                        .filter(it -> it.redo() == redo)
                                        .map(it -> "film " + it.film() + " from " + it.from()))
                        .distinct()
                        .toList());
    }

    /** Nothing where there is nothing to be said. */
    static String line(String what, List<String> each) {
        return line(what, each, ", ");
    }

    private static String line(String what, List<String> each, String between) {
        return each.isEmpty()
                ? ""
                : "  " + what + " "
                        + each.stream().limit(MOST).collect(Collectors.joining(between))
                        + (each.size() > MOST ? " and " + (each.size() - MOST) + " more" : "")
                        + "\n";
    }
}
