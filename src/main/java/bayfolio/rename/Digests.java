package bayfolio.rename;

import bayfolio.fact.Aside;
import bayfolio.model.Difference;
import bayfolio.model.Unit;
import bayfolio.procedure.Script;
import bayfolio.procedure.Translation;
import bayfolio.procedure.TranslationHead;
import bayfolio.read.Edit;
import bayfolio.read.FleetReader;
import bayfolio.read.Value;
import bayfolio.source.SourceFile;
import bayfolio.source.Steps;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/**
 * Digests of what has another name now: of texts that were translated, and of what a model said. One that was of the text as it
 * was is of the text as it is; one that was of an older text stays, so that somebody looks at it.
 */
final class Digests {
    private final NewName name;
    private final FleetReader.Reading before;
    private final FleetReader.Reading after;
    private final Drafts drafts;

    Digests(NewName name, FleetReader.Reading before, FleetReader.Reading after, Drafts drafts) {
        this.name = name;
        this.before = before;
        this.after = after;
        this.drafts = drafts;
    }

    void carried() throws IOException {
        for (Translation each : before.library().translations().written()) {
            translation(each);
        }
        for (Unit unit : before.fleet().units()) {
            if (name.concerns(unit)) {
                overrides(unit);
            }
        }
    }

    private void translation(Translation old) throws IOException {
        Optional<Script> of =
                Texts.sources(old, before.library()).stream().filter(old::isOf).findFirst();
        Optional<Script> now = of.flatMap(script -> after.library().texts().stream()
                .filter(it -> it.file().path().equals(script.file().path()))
                .findFirst());
        if (now.isPresent() && !now.get().digest().equals(of.get().digest())) {
            drafts.edit(
                    old.file().path(),
                    true,
                    List.of(new Edit.Put(
                            Steps.of(TranslationHead.SOURCE.name()),
                            Value.text(now.get().digest()))),
                    old.head().facts().at(TranslationHead.SOURCE));
        }
    }

    private void overrides(Unit unit) throws IOException {
        List<Difference.Override> now = after.fleet().units().stream()
                .filter(it -> it.id().equals(unit.id()))
                .flatMap(it -> after.fleet().difference(it).stream())
                .flatMap(it -> it.overrides().stream())
                .toList();
        for (Difference.Override old : before.fleet().difference(unit).stream()
                .flatMap(it -> it.overrides().stream())
                .toList()) {
            boolean upToDate =
                    old.said().filter(it -> it.value().equals(old.digest())).isPresent();
            Optional<Difference.Override> renamed = now.stream()
                    .filter(it -> it.way().equals(name.moved(old.way())))
                    .findFirst()
                    .filter(it -> upToDate && !it.digest().equals(old.digest()));
            if (renamed.isPresent()) {
                SourceFile file = old.own().at().file();
                Steps said = renamed.get().record().key(Aside.MODEL_SAID.name());
                drafts.edit(
                        file.path(),
                        false,
                        List.of(new Edit.Put(
                                said.key(renamed.get().way().last().toString()),
                                Value.text(renamed.get().digest()))),
                        old.own().at());
            }
        }
    }
}
