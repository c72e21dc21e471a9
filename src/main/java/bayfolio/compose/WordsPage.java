package bayfolio.compose;

import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.model.Word;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The glossary. */
final class WordsPage {
    private final CoachView view;
    private final Stamp stamp;

    WordsPage(CoachView view) {
        this.view = view;
        this.stamp = view.stamp(PageKind.WORDS);
    }

    Page page() {
        return new Page(
                stamp,
                PageKind.WORDS,
                PageKind.WORDS.target(),
                view.word("page.words"),
                List.of(view.paragraph(stamp.child("note"), "page.words.note")),
                view.coach().fleet().words().stream()
                        .sorted(Comparator.comparing(word -> word.word().toLowerCase(Locale.ROOT)))
                        .map(this::section)
                        .toList(),
                false);
    }

    private Section section(Word word) {
        Stamp section = stamp.child("word-" + word.id())
                .from(From.fact(word, Word.MEANING))
                .in(view.language(word));
        List<Content> contents = new ArrayList<>();
        contents.add(Content.Text.of(section.child("meaning"), new Inline.Text(word.meaning())));
        Stamp table = section.child("facts");
        List<Content.FactTable.Row> rows =
                new FactRows(view).of(table, word, Set.of("id", "word", "meaning", "many-meanings"));
        if (!rows.isEmpty()) {
            contents.add(new Content.FactTable(table, rows));
        }
        return new Section(section, Optional.of(new Target.OfWord(word.id())), word.word(), 2, contents);
    }
}
