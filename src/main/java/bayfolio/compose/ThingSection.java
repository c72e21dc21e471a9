package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.NodeId;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.fact.FactVisitor;
import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.measure.Seconds;
import bayfolio.measure.Share;
import bayfolio.model.Access;
import bayfolio.model.Chapter;
import bayfolio.model.Film;
import bayfolio.model.Photo;
import bayfolio.model.Pointer;
import bayfolio.model.Tank;
import bayfolio.model.Thing;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The home of one thing: who may use it, where it is, its facts, what is in it, what names it, what
 * uses it. It is a page, or a section of one.
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
            "panel",
            "row",
            "column",
            "on-pose",
            "off-pose",
            "pointers",
            "display",
            "marks",
            "reads",
            "normal-pose",
            "file",
            "alt",
            "chapters",
            "captions",
            "silent",
            "poster",
            // It orders a sheet, and says nothing of the thing.
            "counted-with",
            // In watts they say nothing to an American; they are told with the days that the gas lasts.
            "gas-input",
            "gas-hours",
            "gas-hours-frost");

    private final CoachView view;
    private final Set<Target> sketched;
    private final ThingLabels labels;

    /** @param sketched what there are small drawings of */
    ThingSection(CoachView view, Set<Target> sketched) {
        this.view = view;
        this.sketched = sketched;
        this.labels = new ThingLabels(view);
    }

    /** As a page of its own. */
    Page page(PageKind kind, Thing thing, List<Thing> inside) {
        Stamp page = view.stamp(kind.node(thing.id()), CoachView.audience(thing), From.thing(thing));
        return new Page(
                page.in(view.language(thing)),
                kind,
                CoachView.target(thing),
                thing.name(),
                contents(page, thing),
                inside.stream().map(it -> section(page, it, 2)).toList(),
                false);
    }

    Section section(Stamp page, Thing thing, int level) {
        Stamp section = page.child(anchor(thing)).from(From.thing(thing)).seenBy(CoachView.audience(thing));
        return new Section(
                section.in(view.language(thing)),
                Optional.of(CoachView.target(thing)),
                thing.name(),
                level,
                contents(section, thing));
    }

    static String anchor(Thing thing) {
        return thing.kind() + "-" + thing.id();
    }

    private List<Content> contents(Stamp stamp, Thing thing) {
        List<Content> contents = new ArrayList<>();
        // Among numbers one looks for a figure, not for a place.
        boolean number = PageKind.NUMBERS.things().contains(thing.kind());
        if (!number) {
            view.coach().system(thing).map(system -> view.chip(stamp, system)).ifPresent(contents::add);
        }
        thing.facts()
                .find("access", Access.class)
                .ifPresent(access -> contents.add(new Content.Mark(
                        stamp.child("access"),
                        "access-" + Type.word(access),
                        view.word(
                                view.unit().worksWhatIsOutOfBounds(thing)
                                        ? "access.out-of-bounds"
                                        : "access." + Type.word(access)))));
        if (thing.facts().find("emergency", Boolean.class).orElse(false)) {
            contents.add(new Content.Mark(stamp.child("emergency"), "emergency", view.word("access.emergency")));
        }
        place(stamp.child("place"), thing).ifPresent(contents::add);
        if (sketched.contains(CoachView.target(thing)) && (!number || thing instanceof Tank)) {
            contents.add(new Content.Sketched(stamp.child("sketches"), CoachView.target(thing)));
        }
        moments(stamp.child("moments"), thing).ifPresent(contents::add);
        if (thing instanceof Film film) {
            contents.add(film(stamp.child("film"), film));
            contents.add(view.paragraph(stamp.child("film-note"), "film.note"));
        } else {
            pictures(stamp, thing).forEach(contents::add);
        }
        Stamp table = stamp.child("facts");
        List<Content.FactTable.Row> rows = new FactRows(view).of(table, thing, TOLD_ABOVE);
        if (!rows.isEmpty()) {
            contents.add(new Content.FactTable(table, rows));
        }
        contents.addAll(view.texts(stamp, view.notes(thing)));
        contents.addAll(labels.of(stamp, thing));
        contents.addAll(around(stamp, thing));
        uses(stamp.child("used-in"), thing).ifPresent(contents::add);
        return contents;
    }

    private Optional<Content> place(Stamp stamp, Thing thing) {
        String place = view.wording().place(thing);
        if (place.isEmpty()) {
            return Optional.empty();
        }
        List<Inline> words = new ArrayList<>();
        words.add(new Inline.Strong(List.of(new Inline.Text(view.word("where")))));
        words.add(new Inline.Text(" " + place));
        view.coach().around(thing).ifPresent(around -> {
            words.add(new Inline.Text(". "));
            words.add(CoachView.link(around));
        });
        return Optional.of(Content.Text.of(stamp, words.toArray(Inline[]::new)));
    }

    /**
     * What is in it, and what names it, kind by kind; what it names itself stands among its facts.
     */
    private List<Content> around(Stamp stamp, Thing thing) {
        Map<String, List<Content.LinkList.Entry>> byKind = new LinkedHashMap<>();
        view.mentions(thing).forEach((other, audience) -> {
            if (other instanceof Film) {
                return; // it is linked at its moment
            }
            boolean inside = view.coach()
                    .around(other)
                    .filter(it -> it.id().equals(thing.id()))
                    .isPresent();
            String heading = inside ? "inside." + other.kind() : "named-by";
            Stamp list =
                    stamp.child(inside ? "inside-" + other.kind() : "named-by").seenBy(audience);
            byKind.computeIfAbsent(heading, it -> new ArrayList<>())
                    .add(view.entry(list, other, inside ? where(other) : ""));
        });
        List<Content> lists = new ArrayList<>();
        byKind.forEach((heading, entries) -> lists.add(new Content.LinkList(
                stamp.child(heading.replace('.', '-')),
                Optional.of(view.maybeWord(heading).orElseGet(() -> view.word("inside"))),
                entries)));
        return lists;
    }

    private static String where(Thing thing) {
        return thing.spot().flatMap(spot -> spot.where()).orElse("");
    }

    /** A photo's own picture, or those that a thing names. */
    private Stream<Content> pictures(Stamp stamp, Thing thing) {
        Stream<Photo> photos = thing instanceof Photo photo
                ? Stream.of(photo)
                : view.unit().photos().stream().filter(photo -> shows(thing, photo));
        return photos.map(photo -> new Content.Picture(
                stamp.child("photo-" + photo.id()).from(From.thing(photo)).seenBy(CoachView.audience(photo)),
                photo.id(),
                photo.alt(),
                pointers(stamp.child("photo-" + photo.id()), photo)));
    }

    private Content film(Stamp stamp, Film film) {
        List<Content.Film.Chapter> chapters = new ArrayList<>();
        Map<String, Integer> named = new HashMap<>();
        for (Chapter chapter : film.chapters()) {
            chapter.on(view.coach()).ifPresent(thing -> {
                String anchor = anchor(thing) + again(named.merge(anchor(thing), 1, Integer::sum));
                chapters.add(new Content.Film.Chapter(
                        stamp.child(anchor).from(From.thing(film)).seenBy(CoachView.audience(thing)),
                        new Target.OfMoment(film.id(), anchor),
                        thousandths(chapter, Chapter.FROM),
                        thousandths(chapter, Chapter.TO),
                        chapter.facts().find(Chapter.TITLE).orElse(""),
                        CoachView.link(thing)));
            });
        }
        String file = film.file();
        return new Content.Film(
                stamp,
                film.id(),
                film.name(),
                film.id() + file.substring(file.lastIndexOf('.')).toLowerCase(Locale.ROOT),
                film.facts().find(Film.POSTER),
                film.facts().has(Film.CAPTIONS),
                chapters);
    }

    private static int thousandths(Chapter chapter, Key<Seconds> key) {
        return (int) Math.round(1000 * chapter.facts().get(key).value());
    }

    /** Where it is seen in films, the first moment in each. */
    private Optional<Content> moments(Stamp stamp, Thing thing) {
        List<Content.LinkList.Entry> entries = new ArrayList<>();
        for (Thing each : view.things(Film.SHAPE.name())) {
            Film film = (Film) each;
            film.chapters().stream()
                    .filter(chapter -> chapter.on(view.coach())
                            .filter(it -> CoachView.target(it).equals(CoachView.target(thing)))
                            .isPresent())
                    .findFirst()
                    .ifPresent(chapter -> entries.add(new Content.LinkList.Entry(
                            stamp.child(film.id()).from(From.thing(film)).seenBy(CoachView.audience(film)),
                            view.link(new Target.OfMoment(film.id(), anchor(thing)), film.name()),
                            Content.Film.clock(thousandths(chapter, Chapter.FROM)))));
        }
        return entries.isEmpty()
                ? Optional.empty()
                : Optional.of(new Content.LinkList(stamp, Optional.of(view.word("film.moments")), entries));
    }

    private List<Content.Picture.Pointer> pointers(Stamp picture, Photo photo) {
        List<Content.Picture.Pointer> pointers = new ArrayList<>();
        Map<String, Integer> named = new HashMap<>();
        for (Pointer pointer : photo.facts().all(Photo.POINTERS)) {
            pointer.on(view.coach())
                    .ifPresent(thing -> pointers.add(new Content.Picture.Pointer(
                            picture.child(anchor(thing) + again(named.merge(anchor(thing), 1, Integer::sum)))
                                    .from(From.thing(thing))
                                    .seenBy(CoachView.audience(thing)),
                            percent(pointer, Pointer.ACROSS),
                            percent(pointer, Pointer.DOWN),
                            CoachView.link(thing))));
        }
        return pointers;
    }

    /** A thing may be pointed at from two sides. */
    private static String again(int times) {
        return times == 1 ? "" : "-" + times;
    }

    private static int percent(Pointer pointer, Key<Share> key) {
        return (int) Math.round(100 * pointer.facts().get(key).value());
    }

    private static boolean shows(Thing thing, Photo photo) {
        boolean[] shows = {false};
        FactVisitor.of(thing.facts(), (type, value) -> {
            boolean reference = type instanceof Type.Reference it && it.kinds().contains(Photo.SHAPE.name());
            shows[0] |= reference && value.value().equals(photo.id());
        });
        return shows[0];
    }

    /** A compartment is used by whatever uses something in it, too: that is why its door is opened. */
    private Optional<Content> uses(Stamp list, Thing thing) {
        Map<NodeId, Content.LinkList.Entry> entries = new LinkedHashMap<>();
        used(list, thing, Audience.EVERYBODY).forEach(entry -> entries.putIfAbsent(entry.id(), entry));
        view.mentions(thing).forEach((other, audience) -> {
            if (view.coach()
                    .around(other)
                    .filter(it -> it.id().equals(thing.id()))
                    .isPresent()) {
                used(list, other, audience).forEach(entry -> entries.merge(entry.id(), entry, ThingSection::wider));
            }
        });
        return entries.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Content.LinkList(list, Optional.of(view.word("used-in")), List.copyOf(entries.values())));
    }

    private Stream<Content.LinkList.Entry> used(Stamp list, Thing thing, Audience audience) {
        return view.uses(CoachView.target(thing)).stream()
                .map(procedure -> view.entry(list.seenBy(audience), procedure, ""));
    }

    private static Content.LinkList.Entry wider(Content.LinkList.Entry one, Content.LinkList.Entry other) {
        return one.stamp().audience() == Audience.EVERYBODY ? one : other;
    }
}
