package bayfolio.procedure;

import bayfolio.finding.Article;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Switch;
import bayfolio.source.Place;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What a writer wants of the things that a reference names, as the title of the link says: {@code
 * [](switch:black-dump-valve "open")}, {@code [](item:fire-extinguisher "any")}, {@code
 * [](switch:water-pump-switch "any off")}.
 *
 * @param any whether one of several is enough, so that they are joined by “or”
 */
record Wish(boolean any, Optional<Wanted> state) {
    static final Wish NONE = new Wish(false, Optional.empty());

    private static final String ANY = "any";

    /**
     * @param kind of the things, such as {@code switch}
     * @param at the title
     */
    static Wish of(String title, String kind, Place at, Consumer<Finding> findings) {
        boolean any = title.equals(ANY) || title.startsWith(ANY + " ");
        String word = any ? title.substring(ANY.length()).strip() : title;
        if (word.isEmpty()) {
            return new Wish(any, Optional.empty());
        }
        if (!kind.equals(Switch.SHAPE.name())) {
            findings.accept(Finding.error(
                            "unknown-state", at, Article.a(kind) + " has no states, and `" + word + "` asks for one")
                    .mend("Ask for the state of a switch only."));
            return new Wish(any, Optional.empty());
        }
        Optional<Wanted> state = Wanted.named(word);
        if (state.isEmpty()) {
            findings.accept(Finding.error("unknown-state", at, "a switch has no state `" + word + "`")
                    .near(NearNames.to(word, Wanted.words()))
                    .mend("Known: " + String.join(", ", Wanted.words()) + "."));
        }
        return new Wish(any, state);
    }
}
