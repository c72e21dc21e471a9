package bayfolio.compose;

import bayfolio.fact.Type;
import bayfolio.fact.Walkthrough;
import bayfolio.handbook.Content;
import bayfolio.handbook.Section;
import bayfolio.model.Access;
import bayfolio.model.Note;
import bayfolio.model.Photo;
import bayfolio.model.Thing;
import bayfolio.procedure.Procedure;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The home of one thing: who may use it, where it is, its facts, what is in it, what names it, what
 * uses it.
 */
final class ThingSection {
    private static final Set<String> TOLD_ABOVE = Set.of(
            "id",
            "name",
            "roles",
            "formerly",
            "access",
            "emergency",
            "side",
            "in",
            "where",
            "photos",
            "file",
            "alt",
            // In watts they say nothing to an American; they are told with the days that the gas lasts.
            "gas-input",
            "gas-hours",
            "gas-hours-frost");

    private final Draft draft;

    ThingSection(Draft draft) {
        this.draft = draft;
    }

    Section of(Thing thing) {
        List<Content> contents = new ArrayList<>();
        thing.facts()
                .find("access", Access.class)
                .ifPresent(access -> contents.add(
                        new Content.Mark("access-" + Type.word(access), draft.word("access." + Type.word(access)))));
        if (thing.facts().find("emergency", Boolean.class).orElse(false)) {
            contents.add(new Content.Mark("emergency", draft.word("access.emergency")));
        }
        place(thing).ifPresent(contents::add);
        pictures(thing).forEach(contents::add);
        List<Content.FactTable.Row> rows = new FactRows(draft).of(thing.facts(), TOLD_ABOVE);
        if (!rows.isEmpty()) {
            contents.add(new Content.FactTable(rows));
        }
        for (Note note : draft.notes(thing)) {
            contents.add(text(List.of(new Inline.Text(note.facts().get(Note.TEXT)))));
        }
        contents.addAll(around(thing));
        uses(thing).ifPresent(contents::add);
        return new Section(anchor(thing), Optional.of(Draft.target(thing)), thing.name(), 2, contents);
    }

    static String anchor(Thing thing) {
        return thing.kind() + "-" + thing.id();
    }

    private Optional<Content> place(Thing thing) {
        String place = draft.wording().place(thing);
        if (place.isEmpty()) {
            return Optional.empty();
        }
        List<Inline> words = new ArrayList<>();
        words.add(new Inline.Strong(List.of(new Inline.Text(draft.word("where")))));
        words.add(new Inline.Text(" " + place));
        draft.coach().around(thing).ifPresent(around -> {
            words.add(new Inline.Text(". "));
            words.add(Draft.link(around));
        });
        return Optional.of(text(words));
    }

    /**
     * What is in it, and what names it, kind by kind; what it names itself stands among its facts.
     */
    private List<Content> around(Thing thing) {
        Map<String, List<Content.LinkList.Entry>> byKind = new LinkedHashMap<>();
        for (Thing other : draft.mentions(thing)) {
            boolean inside = draft.coach()
                    .around(other)
                    .filter(it -> it.id().equals(thing.id()))
                    .isPresent();
            String heading = inside ? "inside." + other.kind() : "named-by";
            byKind.computeIfAbsent(heading, it -> new ArrayList<>())
                    .add(new Content.LinkList.Entry(Draft.link(other), inside ? where(other) : ""));
        }
        List<Content> lists = new ArrayList<>();
        byKind.forEach((heading, entries) -> lists.add(new Content.LinkList(
                Optional.of(draft.maybeWord(heading).orElseGet(() -> draft.word("inside"))), entries)));
        return lists;
    }

    private static String where(Thing thing) {
        return thing.spot().flatMap(spot -> spot.where()).orElse("");
    }

    /** A photo's own picture, or those that a thing names. */
    private Stream<Content> pictures(Thing thing) {
        Stream<Photo> photos = thing instanceof Photo photo
                ? Stream.of(photo)
                : draft.unit().photos().stream().filter(photo -> shows(thing, photo));
        return photos.filter(draft::shows).map(photo -> new Content.Picture(photo.id(), photo.alt()));
    }

    private static boolean shows(Thing thing, Photo photo) {
        boolean[] shows = {false};
        Walkthrough.of(thing.facts(), (type, value) -> {
            boolean reference = type instanceof Type.Reference it && it.kinds().contains(Photo.SHAPE.name());
            shows[0] |= reference && value.value().equals(photo.id());
        });
        return shows[0];
    }

    /** A compartment is used by whatever uses something in it, too: that is why its door is opened. */
    private Optional<Content> uses(Thing thing) {
        Stream<Thing> used = Stream.concat(
                Stream.of(thing),
                draft.mentions(thing).stream()
                        .filter(other -> draft.coach()
                                .around(other)
                                .filter(it -> it.id().equals(thing.id()))
                                .isPresent()));
        List<Content.LinkList.Entry> entries = used.flatMap(it -> draft.uses(Draft.target(it)).stream())
                .distinct()
                .map((Procedure procedure) -> new Content.LinkList.Entry(Draft.link(procedure), ""))
                .toList();
        return entries.isEmpty()
                ? Optional.empty()
                : Optional.of(new Content.LinkList(Optional.of(draft.word("used-in")), entries));
    }

    private static Content text(List<Inline> words) {
        return new Content.Text(new Block.Paragraph(words));
    }
}
