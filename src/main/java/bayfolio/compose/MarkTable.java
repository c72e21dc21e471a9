package bayfolio.compose;

import bayfolio.document.Content;
import bayfolio.document.Stamp;
import bayfolio.model.HireMark;
import bayfolio.prose.Inline;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What earlier hires left, by the numbers that drawings have, with room for what is found this time. */
final class MarkTable {
    private static final List<String> HEAD =
            List.of("sheet.number", "sheet.place", "sheet.kind", "sheet.size", "sheet.since", "sheet.note");

    private final CoachView view;

    MarkTable(CoachView view) {
        this.view = view;
    }

    /** @param room lines that are empty */
    Content of(Stamp section, List<HireMark> marks, int room) {
        List<List<List<Inline>>> rows = new ArrayList<>();
        marks.forEach(mark -> rows.add(row(rows.size() + 1, mark)));
        for (int empty = 0; empty < room; empty++) {
            rows.add(Sheet.empty(Sheet.cell(Integer.toString(rows.size() + 1)), HEAD.size()));
        }
        return new Sheet(view).table(section, HEAD, rows);
    }

    private List<List<Inline>> row(int number, HireMark mark) {
        FactRows facts = new FactRows(view);
        return Stream.of(
                        Integer.toString(number),
                        view.words()
                                .row(Stream.of(HireMark.SIDE, HireMark.WHERE, HireMark.FROM_FRONT, HireMark.HEIGHT)
                                        .map(key -> facts.plain(mark, key))
                                        .filter(it -> !it.isEmpty())
                                        .toList()),
                        facts.plain(mark, HireMark.KIND),
                        facts.plain(mark, HireMark.SIZE),
                        facts.plain(mark, HireMark.SINCE),
                        facts.plain(mark, HireMark.NOTE))
                .map(Sheet::cell)
                .toList();
    }
}
