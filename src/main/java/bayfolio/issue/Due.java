package bayfolio.issue;

import bayfolio.edition.Change;
import bayfolio.issue.Consequence.Redo;
import bayfolio.source.Digest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A piece of work that changes make for somebody, told once however many changes want it.
 *
 * @param key by which it is known again: {@code photo/left-side}
 * @param state a digest of the changes that want it: what was done for others has to be done anew
 * @param text one line
 */
record Due(Group group, String key, String state, String text) {
    /** Where somebody goes to do it, in the order of a list. */
    enum Group {
        ON_THE_COACH("On the coach"),
        PAPER("To print and swap"),
        PHOTOGRAPHS("To photograph again"),
        TRANSLATIONS("Texts to translate"),
        LOOK_UPS("Facts to look up"),
        LINKS("Links to tell");

        private final String heading;

        Group(String heading) {
            this.heading = heading;
        }

        String heading() {
            return heading;
        }
    }

    /** What one consequence asks for; the same sentence for the same work, but for the end, which says why. */
    private record Wish(Group group, String key, String act, String why) {}

    /** Grouped, in the order in which they come up. */
    static List<Due> of(List<Consequences> changes) {
        Map<String, List<Wish>> wishes = new LinkedHashMap<>();
        Map<String, TreeSet<String>> wanted = new LinkedHashMap<>();
        for (Consequences each : changes) {
            for (Consequence consequence : each.all()) {
                for (Wish wish : wishes(each, consequence)) {
                    wishes.computeIfAbsent(wish.key(), it -> new ArrayList<>()).add(wish);
                    wanted.computeIfAbsent(wish.key(), it -> new TreeSet<>())
                            .add(each.changed().change().toString());
                }
            }
        }
        List<Due> due = new ArrayList<>();
        for (Group group : Group.values()) {
            wishes.forEach((key, all) -> {
                Wish first = all.get(0);
                if (first.group() == group) {
                    String why = all.stream()
                            .map(Wish::why)
                            .filter(it -> !it.isEmpty())
                            .distinct()
                            .collect(Collectors.joining("; "));
                    due.add(new Due(
                            group,
                            key,
                            Digest.of(String.join("\n", wanted.getOrDefault(key, new TreeSet<>()))),
                            first.act() + (why.isEmpty() ? "." : ": " + why + ".")));
                }
            });
        }
        return due;
    }

    private static List<Wish> wishes(Consequences each, Consequence consequence) {
        return consequence.accept(new Consequence.Visitor<List<Wish>>() {
            @Override
            public List<Wish> label(Consequence.Label label) {
                String of = "the label `" + label.thing().name() + "`";
                String at = label.place().isEmpty() ? "" : ", " + label.place();
                String key = "/" + label.thing().kind() + "/" + label.thing().id();
                return List.of(
                        switch (label.act()) {
                            case SCRAPE_OFF ->
                                new Wish(Group.ON_THE_COACH, "scrape-off" + key, "Scrape off " + of + at, "");
                            case STICK_ON -> new Wish(Group.ON_THE_COACH, "stick-on" + key, "Stick on " + of + at, "");
                            case PRINT_ANEW ->
                                new Wish(Group.ON_THE_COACH, "label" + key, "Print anew and swap " + of + at, "");
                        });
            }

            @Override
            public List<Wish> printed(Consequence.Printed printed) {
                String what = printed.on().isEmpty()
                        ? printed.paper().words()
                        : "changed pages of the " + printed.paper().words();
                // Nobody throws a book away over a comma.
                return each.changed().technical()
                        ? List.of(new Wish(
                                Group.PAPER,
                                "paper/" + printed.paper().words().replace(' ', '-'),
                                "Print the " + what + " and swap what is on board or on the clipboard",
                                ""))
                        : List.of();
            }

            @Override
            public List<Wish> picture(Consequence.Picture picture) {
                return List.of(redo("photo", picture.photo(), picture.thing(), picture.redo(), ""));
            }

            @Override
            public List<Wish> scene(Consequence.Scene scene) {
                return List.of(redo("film", scene.film(), scene.thing(), scene.redo(), " from " + scene.from()));
            }

            private Wish redo(String kind, String id, Change.Thing thing, Redo redo, String from) {
                return new Wish(
                        Group.PHOTOGRAPHS,
                        kind + "/" + id,
                        (redo == Redo.TAKE_AGAIN ? "Take again the " : "Look at the ") + kind + " `" + id + "`",
                        "it shows " + thing + from);
            }

            @Override
            public List<Wish> lookUp(Consequence.LookUp lookUp) {
                return List.of(new Wish(
                        Group.LOOK_UPS,
                        "look-up/" + lookUp.of().replace(' ', '/'),
                        "Look up on the coach, " + lookUp.of(),
                        lookUp.why()));
            }

            @Override
            public List<Wish> translation(Consequence.Translation translation) {
                return List.of(new Wish(
                        Group.TRANSLATIONS,
                        "text/" + translation.language() + "/" + translation.of(),
                        "Translate into `" + translation.language() + "`: `" + translation.of() + "`",
                        ""));
            }

            @Override
            public List<Wish> reading(Consequence.Reading reading) {
                return List.of();
            }

            @Override
            public List<Wish> link(Consequence.Link link) {
                return List.of(new Wish(
                        Group.LINKS,
                        "link/" + link.page(),
                        link.gone()
                                ? "No mail may lead to `" + link.page() + "` any more"
                                : "New, for mails that want it: `" + link.page() + "`",
                        ""));
            }
        });
    }
}
