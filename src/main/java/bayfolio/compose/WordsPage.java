package bayfolio.compose;

import bayfolio.handbook.Content;
import bayfolio.handbook.Page;
import bayfolio.handbook.Section;
import bayfolio.model.Word;
import bayfolio.procedure.Procedure;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The glossary. */
final class WordsPage {
    private final Draft draft;

    WordsPage(Draft draft) {
        this.draft = draft;
    }

    Page page() {
        return new Page(
                new Target.OfPage("words"),
                "words.html",
                draft.word("page.words"),
                List.of(new Content.Text(new Block.Paragraph(List.of(new Inline.Text(draft.word("page.words.note")))))),
                draft.coach().fleet().words().stream()
                        .sorted(Comparator.comparing(word -> word.word().toLowerCase(Locale.ROOT)))
                        .map(this::section)
                        .toList());
    }

    private Section section(Word word) {
        Target home = new Target.OfWord(word.id());
        List<Content> contents = new ArrayList<>();
        contents.add(new Content.Text(new Block.Paragraph(List.of(new Inline.Text(word.meaning())))));
        List<Content.FactTable.Row> rows =
                new FactRows(draft).of(word.facts(), java.util.Set.of("id", "word", "meaning", "many-meanings"));
        if (!rows.isEmpty()) {
            contents.add(new Content.FactTable(rows));
        }
        List<Content.LinkList.Entry> uses = draft.uses(home).stream()
                .map((Procedure procedure) -> new Content.LinkList.Entry(Draft.link(procedure), ""))
                .toList();
        if (!uses.isEmpty()) {
            contents.add(new Content.LinkList(Optional.of(draft.word("used-in")), uses));
        }
        return new Section("word-" + word.id(), Optional.of(home), word.word(), 2, contents);
    }
}
