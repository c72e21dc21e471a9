package bayfolio.ask;

import bayfolio.document.PageKind;
import bayfolio.fact.Type;
import bayfolio.fact.UnreadException;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Fleet;
import bayfolio.model.Notice;
import bayfolio.model.Role;
import bayfolio.model.Unit;
import bayfolio.model.Whose;
import bayfolio.procedure.Form;
import bayfolio.procedure.Library;
import bayfolio.procedure.References;
import bayfolio.procedure.Stage;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/** What a term may begin with, before a colon; without one it is a dotted name. Whatever else may be asked for is one line more. */
enum Scheme {
    ROLE(Scheme::role),
    FEATURE(Scheme::feature),
    PROCEDURE((word, of, findings) -> script(Form.PROCEDURE, word, of, findings)),
    TROUBLE((word, of, findings) -> script(Form.TROUBLE, word, of, findings)),
    STAGE(Scheme::stage),
    PAGE(Scheme::page),
    MODEL(Scheme::model),
    NOTICE((word, of, findings) -> notice(false, word, of, findings)),
    RECALL((word, of, findings) -> notice(true, word, of, findings));

    /** What is asked. */
    record Of(Fleet fleet, Library library, Handbooks handbooks) {}

    private interface Reader {
        /** @param word behind the colon */
        Optional<Term> read(Located<String> word, Of of, Consumer<Finding> findings);
    }

    private final Reader reader;

    Scheme(Reader reader) {
        this.reader = reader;
    }

    /** As it is written. */
    String word() {
        return Type.word(this);
    }

    static Optional<Scheme> named(String word) {
        return Arrays.stream(values())
                .filter(scheme -> scheme.word().equals(word))
                .findFirst();
    }

    static List<String> words() {
        return Arrays.stream(values()).map(Scheme::word).toList();
    }

    /** Nothing for what is nowhere, which is told. */
    Optional<Term> read(Located<String> word, Of of, Consumer<Finding> findings) {
        return reader.read(word, of, findings);
    }

    private static Optional<Term> role(Located<String> word, Of of, Consumer<Finding> findings) {
        Optional<Role> role = of.fleet.role(word.value());
        if (role.isEmpty()) {
            findings.accept(Finding.error("unknown-reference", word.at(), "there is no role `" + word.value() + "`")
                    .near(NearNames.to(
                            word.value(),
                            of.fleet.roles().stream().map(Role::id).toList()))
                    .mend("The reference for writers lists them."));
        }
        return role.map(RoleTerm::new);
    }

    private static Optional<Term> feature(Located<String> word, Of of, Consumer<Finding> findings) {
        return of.fleet()
                .equipment()
                .words()
                .read(word, unknown -> findings.accept(unknown.mend("The reference for writers lists them.")))
                .map(FeatureTerm::new);
    }

    private static Optional<Term> script(Form form, Located<String> word, Of of, Consumer<Finding> findings) {
        List<Finding> told = new ArrayList<>();
        // While a file of them could not be read, nobody knows whether there is one of that name.
        UnreadException.upTo(() -> {
            if (!of.library.knows(form, word.value(), Whose.ALL)) {
                told.add(References.unknownScript(form, word.value(), word.at(), of.library));
            }
        });
        told.forEach(findings);
        return told.isEmpty() ? Optional.of(new ScriptTerm(form, word.value())) : Optional.empty();
    }

    private static Optional<Term> page(Located<String> word, Of of, Consumer<Finding> findings) {
        PageTerm term = new PageTerm(word.value());
        Set<String> known =
                new TreeSet<>(Arrays.stream(PageKind.values()).map(PageKind::id).toList());
        boolean all = true;
        for (Unit unit : known.contains(word.value()) ? List.<Unit>of() : of.fleet.units()) {
            try {
                of.handbooks.of(unit).pages().forEach(page -> known.add(page.address()));
            } catch (UnreadException nobodyKnows) {
                all = false;
            }
            if (known.contains(word.value())) {
                break;
            }
        }
        if (all && !known.contains(word.value())) {
            findings.accept(Finding.error("unknown-reference", word.at(), "no coach has a page `" + word.value() + "`")
                    .near(NearNames.to(word.value(), known))
                    .mend("Write its address without an ending, such as `switch/pump-switch`, or its kind."));
            return Optional.empty();
        }
        return Optional.of(term);
    }

    private static Optional<Term> model(Located<String> word, Of of, Consumer<Finding> findings) {
        List<String> known = of.fleet.units().stream()
                .flatMap(unit -> unit.model().stream())
                .distinct()
                .toList();
        return known(word, "model", known, findings).map(ModelTerm::new);
    }

    private static Optional<Term> notice(boolean recall, Located<String> word, Of of, Consumer<Finding> findings) {
        List<String> known = (recall ? of.fleet.recalls() : of.fleet.notices())
                .stream().map(Notice::id).distinct().toList();
        Scheme scheme = recall ? RECALL : NOTICE;
        return known(word, scheme.word(), known, findings).map(id -> new NoticeTerm(scheme, id));
    }

    private static Optional<String> known(
            Located<String> word, String what, List<String> known, Consumer<Finding> findings) {
        if (known.contains(word.value())) {
            return Optional.of(word.value());
        }
        findings.accept(Finding.error("unknown-reference", word.at(), "there is no " + what + " `" + word.value() + "`")
                .near(NearNames.to(word.value(), known))
                .mend(known.isEmpty() ? "There is none at all." : "There is " + String.join(", ", known) + "."));
        return Optional.empty();
    }

    private static Optional<Term> stage(Located<String> word, Of of, Consumer<Finding> findings) {
        References.unknownStage(word.value(), word.at()).ifPresent(findings);
        return Arrays.stream(Stage.values())
                .filter(stage -> stage.word().equals(word.value()))
                .findFirst()
                .map(StageTerm::new);
    }
}
