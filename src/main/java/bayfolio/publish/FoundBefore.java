package bayfolio.publish;

import bayfolio.check.Check;
import bayfolio.fact.UnreadException;
import bayfolio.finding.Finding;
import bayfolio.finding.FindingLine;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import bayfolio.source.SourceFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What was found in coaches when they were published last: it holds for those of which nothing has changed. A coach is
 * looked at again where its list is not there, or says something that nobody understands any more.
 */
public final class FoundBefore implements Check.Known {
    private final Optional<Edition> edition;
    private final Inputs inputs;
    private final Function<String, Optional<SourceFile>> files;

    private FoundBefore(Optional<Edition> edition, Inputs inputs, Function<String, Optional<SourceFile>> files) {
        this.edition = edition;
        this.inputs = inputs;
        this.files = files;
    }

    /**
     * @param out the folder that is published into
     * @param fleet as it was before it was read
     * @param files those that were read, by their paths as findings name them
     */
    public static FoundBefore in(
            Path out, FleetState fleet, FleetReader.Reading reading, Function<String, Optional<SourceFile>> files)
            throws IOException {
        return new FoundBefore(OutputFolder.seen(out), new Inputs(reading.fleet(), fleet), files);
    }

    @Override
    public Optional<List<Finding>> of(Unit unit) {
        try {
            Optional<Part> part = edition.isPresent() ? edition.get().part(unit.id()) : Optional.empty();
            if (part.isEmpty() || !part.get().found().of().equals(inputs.ofFindings(unit))) {
                return Optional.empty();
            }
            List<Finding> findings = new ArrayList<>();
            for (String line : part.get().found().lines()) {
                Optional<Finding> finding = FindingLine.read(line, files);
                if (finding.isEmpty()) {
                    return Optional.empty();
                }
                findings.add(finding.get());
            }
            return Optional.of(findings);
        } catch (IOException | UnreadException unknown) {
            // Somebody else publishes meanwhile, or a description is broken.
            return Optional.empty();
        }
    }
}
