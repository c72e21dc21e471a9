package bayfolio.ask;

import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.ConditionWords;
import bayfolio.model.Kinds;
import bayfolio.procedure.Script;
import bayfolio.procedure.Stated;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** The words of a question, joined like those of a condition. */
record Terms(Scheme.Of of) implements ConditionWords<Term> {
    @Override
    public String called() {
        return "a name";
    }

    @Override
    public String mend() {
        return "Write names such as `tank.gray.capacity`, `role:black-dump-valve` or `feature:solar`, joined by `and`, `or`,"
                + " `not`.";
    }

    @Override
    public Optional<Term> read(Located<String> word, Consumer<Finding> findings) {
        String written = word.value();
        int colon = written.indexOf(':');
        if (colon < 0) {
            return named(word, findings);
        }
        String prefix = written.substring(0, colon);
        if (Kinds.names().contains(prefix)) {
            // As references write it.
            return named(word.map(it -> it.replace(':', '.')), findings);
        }
        Optional<Scheme> scheme = Scheme.named(prefix);
        if (scheme.isEmpty()) {
            findings.accept(Finding.error("unknown-kind", word.at(), "nobody can ask for a `" + prefix + "`")
                    .near(NearNames.to(
                            prefix,
                            Stream.concat(Scheme.words().stream(), Kinds.names().stream())
                                    .toList()))
                    .mend("Before a colon stands " + String.join(", ", Scheme.words()) + " or a kind of thing."));
        }
        return scheme.flatMap(it -> it.read(behind(word, colon + 1), of, findings));
    }

    /** The rest of a word, at its place. */
    private static Located<String> behind(Located<String> word, int from) {
        Place at = word.at();
        int points = word.value().codePointCount(0, from);
        int length = at.endColumn() - at.column();
        return new Located<>(
                word.value().substring(from),
                length > points ? Place.of(at.file(), at.line(), at.column() + points, length - points) : at);
    }

    private Optional<Term> named(Located<String> name, Consumer<Finding> findings) {
        List<Finding> told = new ArrayList<>();
        Stated.check(name, of.fleet(), of.library(), told::add);
        List<String> meant = called(name.value());
        told.forEach(finding -> findings.accept(meant.isEmpty() ? finding : finding.near(meant)));
        return told.isEmpty() ? Optional.of(new FactTerm(name.value())) : Optional.empty();
    }

    /** What has that name in another way: conditions of procedures write features bare. */
    private List<String> called(String name) {
        return Stream.of(
                        Stream.of(name)
                                .filter(of.fleet().equipment().words().known()::contains)
                                .map(it -> Scheme.FEATURE.word()),
                        of.fleet().role(name).stream().map(it -> Scheme.ROLE.word()),
                        of.library().scripts().stream()
                                .filter(script ->
                                        script.form().hasSteps() && script.id().equals(name))
                                .map((Script script) -> script.form().scheme()))
                .flatMap(each -> each)
                .distinct()
                .map(scheme -> scheme + ":" + name)
                .toList();
    }
}
