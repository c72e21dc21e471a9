package bayfolio.read;

import bayfolio.finding.Finding;
import bayfolio.model.Difference;
import bayfolio.model.Unit;
import bayfolio.source.SourceFile;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A coach as its own file and that of its model describe it.
 *
 * @param model that it names
 * @param unit empty where nobody knows what it is
 * @param difference from its model; empty for one that has none
 */
record Resolved(Optional<String> model, Optional<Unit> unit, Optional<Difference> difference) {
    /** That it takes in mind, roughly: what facts and their places take beside the text that they were read from. */
    long bytes() {
        return unit.map(it -> 40_000 + 8L * it.facts().at().file().text().length())
                .orElse(0L);
    }

    /** A coach for itself, over the model that it names, which is read for it. */
    static Optional<Resolved> of(Folder folder, SourceFile file, Lists lists, Consumer<Finding> findings) {
        return of(folder, file, lists, Layered.models(folder, file, findings), findings);
    }

    /** @param models see {@link Layered#of} */
    static Optional<Resolved> of(
            Folder folder,
            SourceFile file,
            Lists lists,
            Map<String, Optional<Model>> models,
            Consumer<Finding> findings) {
        return Layered.of(file, models, findings).map(layered -> {
            Decoder own = new Decoder(layered.places(), lists, Optional.of(folder), findings);
            Decoder decoder = layered.model()
                    .map(model -> own.over(model, layered.told()))
                    .orElse(own);
            return new Resolved(
                    layered.named(),
                    layered.node()
                            .flatMap(node -> decoder.record(node, Unit.SHAPE))
                            .map(unit -> lists.equipment().map(unit::equipped).orElse(unit)),
                    layered.difference());
        });
    }
}
