package bayfolio.procedure;

import bayfolio.catalog.Catalogs;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Rewording;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The scripts and the facts of a fleet in other languages, as far as they are of the texts as they are now. */
public final class Translations {
    public static final Translations NONE = new Translations(List.of(), Rewording.NONE);

    private final List<Translation> written;
    private final Rewording facts;
    private final Map<Name, Translation> byName = new HashMap<>();
    private final Map<Name, Script> made = new HashMap<>();

    private record Name(String language, Form form, String id) {}

    /** @param written of two of one language and one text the first counts */
    public Translations(List<Translation> written, Rewording facts) {
        this.facts = facts;
        this.written = List.copyOf(written);
        written.forEach(each -> byName.putIfAbsent(new Name(each.language(), each.form(), each.of()), each));
    }

    public Rewording facts() {
        return facts;
    }

    /** All of them, those too that are of older texts. */
    public List<Translation> written() {
        return written;
    }

    /** A script in the words of a reader's language; as it is written, where there are none or where they are of an older text. */
    public Script in(String language, Script script) {
        if (byName.isEmpty() || language.equals(script.head().language())) {
            return script;
        }
        return translation(language, script)
                .or(() -> translation(Catalogs.main(language), script))
                .filter(each -> each.isOf(script))
                .map(each -> made(each, script))
                .orElse(script);
    }

    private Optional<Translation> translation(String language, Script script) {
        return Optional.ofNullable(byName.get(new Name(language, script.form(), script.id())));
    }

    /** What is wrong with its body is told by {@link #check}. */
    private synchronized Script made(Translation translation, Script script) {
        return made.computeIfAbsent(
                new Name(translation.language(), script.form(), script.id()),
                it -> script.in(translation, finding -> {}));
    }

    /** Translations of texts that are no more, or that have changed since. */
    public List<Finding> check(Library library) {
        List<Finding> findings = new ArrayList<>();
        for (Translation each : written) {
            Place of = each.head().facts().at(TranslationHead.OF);
            List<Script> scripts = library.scripts().stream()
                    .filter(script -> script.form() == each.form())
                    .toList();
            // A coach may have a text of its own under the id of a shared one.
            List<Script> sources = scripts.stream()
                    .filter(script -> script.id().equals(each.of()))
                    .toList();
            if (sources.isEmpty()) {
                findings.add(Finding.error(
                                "unknown-translation",
                                of,
                                "there is no " + each.form().called() + " `" + each.of() + "` to be translated")
                        .near(NearNames.to(
                                each.of(), scripts.stream().map(Script::id).toList()))
                        .mend("Name the text that this is, or take the file out."));
            } else {
                sources.get(0).in(each, findings::add);
                sources.stream()
                        .filter(each::isOf)
                        .findFirst()
                        .ifPresentOrElse(
                                source -> namedOtherwise(each, source).ifPresent(findings::add),
                                () -> findings.add(stale(each, sources.get(0))));
            }
        }
        return findings;
    }

    /** Readers get the text as it is written until it is translated anew; where that warns of harm, nothing else will do. */
    private static Finding stale(Translation translation, Script source) {
        Place at = translation.head().facts().at(TranslationHead.SOURCE);
        String message =
                "`" + source.id() + "` has changed since it was translated into `" + translation.language() + "`";
        String mend = "Translate what is new, then write `source: " + source.digest() + "`.";
        return (source.warns()
                        ? Finding.error("stale-translation", at, message + ", and it warns of harm")
                        : Finding.warning("stale-translation", at, message))
                .mend(mend);
    }

    /** What parts and steps are called is no word of a language: links and editions know them by it. */
    private static Optional<Finding> namedOtherwise(Translation translation, Script source) {
        List<String> names = SourceBlock.anchors(source.body());
        return names.equals(SourceBlock.anchors(translation.body()))
                ? Optional.empty()
                : Optional.of(Finding.error(
                                "named-otherwise",
                                translation.head().facts().at(TranslationHead.OF),
                                "parts or steps are called otherwise than in `" + source.id() + "`")
                        .mend("Keep them as they are, in this order: "
                                + names.stream()
                                        .map(name -> "`{#" + name + "}`")
                                        .collect(Collectors.joining(", "))
                                + "."));
    }

    /** Without what is for staff. */
    Translations of(List<Script> scripts) {
        return new Translations(
                written.stream()
                        .filter(each -> scripts.stream()
                                .anyMatch(script -> script.form() == each.form()
                                        && script.id().equals(each.of())))
                        .toList(),
                facts);
    }
}
