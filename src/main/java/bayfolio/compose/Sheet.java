package bayfolio.compose;

import bayfolio.document.Content;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.model.Thing;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** The pieces that sheets for staff are made of: tables with room to write in. */
final class Sheet {
    private final CoachView view;

    Sheet(CoachView view) {
        this.view = view;
    }

    Page page(PageKind kind, Function<Stamp, List<Section>> sections) {
        Stamp page = view.stamp(kind);
        return new Page(
                page,
                kind,
                kind.target(),
                view.word("page." + kind.id()),
                List.of(view.paragraph(page.child("note"), "page." + kind.id() + ".note")),
                sections.apply(page),
                false);
    }

    /** A table under its title. */
    Section section(Stamp section, String title, List<String> head, List<List<List<Inline>>> rows) {
        return Section.of(section, title, List.of(table(section, head, rows)));
    }

    Content table(Stamp section, List<String> head, List<List<List<Inline>>> rows) {
        return new Content.Text(
                section.child("table"),
                List.of(new Block.Table(
                        head.stream().map(key -> cell(view.word(key))).toList(), rows)));
    }

    /** One row for each thing to look at, with a column for each end of the hire. */
    Section outAndBack(Stamp section, Stream<List<Inline>> whats) {
        return section(
                section,
                view.word("sheet." + section.id().within()),
                List.of("sheet.what", "sheet.out", "sheet.back"),
                whats.map(what -> List.of(what, cell(""), cell(""))).toList());
    }

    /** @param head the first column says what is to be filled in, the others have room for it */
    Section signed(Stamp signed, List<String> head, String... words) {
        return section(
                signed,
                view.word("sheet.signed"),
                head,
                Stream.of(words)
                        .map(word -> empty(cell(view.word("sheet." + word)), head.size()))
                        .toList());
    }

    /** Out and back, by both sides. */
    Section signedByBoth(Stamp signed) {
        return signed(
                signed,
                List.of("sheet.what", "sheet.out", "sheet.back"),
                "edition",
                "date",
                "staff-name",
                "renter-name");
    }

    /** A row with one thing said, and room for the rest. */
    static List<List<Inline>> empty(List<Inline> first, int columns) {
        return Stream.concat(Stream.of(first), Stream.generate(() -> cell("")).limit(columns - 1L))
                .toList();
    }

    static List<Inline> cell(Thing thing) {
        return List.of(CoachView.link(thing));
    }

    static List<Inline> cell(String words) {
        return List.of(new Inline.Text(words));
    }
}
