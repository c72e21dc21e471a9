package bayfolio.issue;

import bayfolio.check.CheckedCoach;
import bayfolio.edition.Change;
import bayfolio.edition.Changed;
import bayfolio.edition.Compared;
import bayfolio.edition.State;
import bayfolio.model.Rewording;
import bayfolio.procedure.Script;
import bayfolio.procedure.Translation;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Texts that are otherwise, in each language into which somebody translates this coach or the fleet. */
final class TranslationsOf implements Consequent {
    private static final String TEXT = "text:";

    private final Compared compared;

    /** Names of the texts that are not there in a language as they are now. */
    private final Map<String, Set<String>> missing = new HashMap<>();

    /** @param now the coach as its files are; translations are no part of an edition */
    TranslationsOf(Compared compared, CheckedCoach now) {
        this.compared = compared;
        Rewording facts = now.library().translations().facts();
        facts.languages(now.unit())
                .forEach(language -> add(
                        language, facts.missing(language, now.unit()).stream().map(Rewording.Source::of)));
        facts.languages()
                .forEach(language -> add(
                        language,
                        facts.missing(language, now.coach().fleet()).stream().map(Rewording.Source::of)));
        List<Script> scripts = now.library().of(now.unit());
        for (Translation translation : now.library().translations().written()) {
            add(
                    translation.language(),
                    scripts.stream()
                            .filter(script -> script.form() == translation.form()
                                    && script.id().equals(translation.of())
                                    && !translation.isOf(script))
                            .map(script -> script.form().scheme() + "/" + script.id()));
        }
    }

    private void add(String language, Stream<String> texts) {
        Set<String> all = missing.computeIfAbsent(language, it -> new TreeSet<>());
        texts.forEach(all::add);
    }

    @Override
    public Stream<Consequence.Translation> of(Changed changed) {
        List<String> texts = Stream.concat(
                        values(changed.change())
                                .filter(value -> !value.after().isEmpty())
                                .flatMap(value -> State.text(value.way()).stream()),
                        scripts(changed))
                .distinct()
                .toList();
        return missing.keySet().stream()
                .sorted()
                .flatMap(language -> texts.stream()
                        .filter(missing.getOrDefault(language, Set.of())::contains)
                        .map(text -> new Consequence.Translation(language, text)));
    }

    private static Stream<Change.Value> values(Change change) {
        if (change instanceof Change.Added added) {
            return added.values().stream();
        } else if (change instanceof Change.Moved moved) {
            return moved.values().stream();
        } else if (change instanceof Change.Relabelled relabelled) {
            return Stream.of(relabelled.value());
        } else if (change instanceof Change.AtPickup atPickup) {
            return Stream.of(atPickup.value());
        } else if (change instanceof Change.ValueChanged fact) {
            return Stream.of(fact.value());
        }
        return Stream.empty();
    }

    /** Those that are written otherwise and that the parts came from. */
    private Stream<String> scripts(Changed changed) {
        return changed.parts().stream()
                .flatMap(id -> Stream.of(compared.before(), compared.after())
                        .flatMap(state -> Optional.ofNullable(state.parts().get(id)).stream()))
                .flatMap(part -> part.from().stream())
                .filter(from -> from.startsWith(TEXT))
                .map(from -> from.substring(TEXT.length()))
                .filter(compared.rewritten()::contains);
    }
}
