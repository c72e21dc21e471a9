package bayfolio.check.text;

import bayfolio.catalog.Catalogs;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import java.util.List;
import java.util.stream.Stream;

/** A language is promised that the theme has no words for, or none at all. */
public final class LanguageWithoutWords {
    private LanguageWithoutWords() {}

    public static Stream<Finding> check(Fleet fleet, Catalogs catalogs) {
        return Stream.concat(
                of(fleet.facts().facts(), FleetFacts.LANGUAGES, catalogs),
                fleet.units().stream().flatMap(unit -> of(unit.facts(), Unit.LANGUAGES, catalogs)));
    }

    private static Stream<Finding> of(Facts facts, Key<List<Located<String>>> key, Catalogs catalogs) {
        String known = String.join(
                " and ", catalogs.languages().stream().map(it -> "`" + it + "`").toList());
        return facts.ifRead(key).stream()
                .flatMap(languages -> languages.value().isEmpty() && facts.read(key)
                        ? Stream.of(Finding.error("language-without-words", languages.at(), "no language is named")
                                .mend("Name one that the theme has words for: " + known + "."))
                        : languages.value().stream()
                                .filter(language -> !catalogs.has(language.value()))
                                .map(language -> Finding.error(
                                                "language-without-words",
                                                language.at(),
                                                "the theme has no words for the language `" + language.value() + "`")
                                        .mend("It has words for " + known + "; another needs a file `words-"
                                                + language.value() + ".properties`.")));
    }
}
