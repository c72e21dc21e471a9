package bayfolio.rename;

import bayfolio.fact.Shape;
import bayfolio.finding.Finding;
import bayfolio.model.Chapter;
import bayfolio.model.Equipment;
import bayfolio.model.FactText;
import bayfolio.model.FactTexts;
import bayfolio.procedure.Mentions;
import bayfolio.procedure.Script;
import bayfolio.read.Edit;
import bayfolio.read.Folder;
import bayfolio.read.HeadedText;
import bayfolio.read.Replacement;
import bayfolio.read.Scalars;
import bayfolio.read.Value;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import bayfolio.source.Steps;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds all places that use a name, in whatever kind of file, and writes the new name there. */
final class Uses {
    private final Folder folder;
    private final NewName name;
    private final Drafts drafts;

    Uses(Folder folder, NewName name, Drafts drafts) {
        this.folder = folder;
        this.name = name;
        this.drafts = drafts;
    }

    /** @param scripts all texts that may use it, translations among them */
    void renamed(List<Script> scripts, Mentions mentions) throws IOException {
        texts(scripts, mentions);
        for (Description each : name.descriptions()) {
            description(each);
        }
        for (String beside : name.folders()) {
            for (String path : folder.factTexts(beside)) {
                factTexts(path);
            }
        }
        for (Description each : name.descriptions()) {
            String films = new SourceFile(each.path(), "").folder() + "/films";
            for (String file : each.coach().isPresent() ? folder.files(films, ".vtt") : List.<String>of()) {
                cues(films + "/" + file, each);
            }
        }
    }

    private void texts(List<Script> scripts, Mentions mentions) throws IOException {
        Map<String, List<Replacement>> byFile = new LinkedHashMap<>();
        for (Script script : scripts) {
            mentions.in(script).stream()
                    .filter(name::means)
                    .forEach(mention -> byFile.computeIfAbsent(
                                    mention.at().file().path(), path -> new ArrayList<>())
                            .add(new Replacement(mention.at(), name.before(), name.after())));
        }
        for (Map.Entry<String, List<Replacement>> file : byFile.entrySet()) {
            drafts.replace(file.getKey(), file.getValue());
        }
    }

    private void description(Description description) throws IOException {
        List<Scalars.Scalar> scalars = scalars(description.path(), description.shape(), description.head());
        List<Edit> edits = new ArrayList<>();
        Optional<Place> first = Optional.empty();
        for (Scalars.Scalar scalar : scalars) {
            List<Edit> its = edits(scalar, description, scalars);
            edits.addAll(its);
            first = first.isEmpty() && !its.isEmpty() ? Optional.of(scalar.at()) : first;
        }
        if (first.isPresent()) {
            drafts.edit(description.path(), description.head(), edits, first.get());
        }
    }

    private List<Edit> edits(Scalars.Scalar scalar, Description in, List<Scalars.Scalar> scalars) {
        if (name.gives(scalar)) {
            List<Edit> edits = new ArrayList<>(List.of(new Edit.Put(scalar.way(), Value.text(name.after()))));
            Steps formerly = scalar.way().around().key("formerly");
            boolean own = scalars.stream().anyMatch(it -> it.way().within(formerly));
            if (own || in.path().equals(name.home())) {
                edits.addAll(formerly(formerly, scalars));
            }
            return edits;
        }
        if (name.means(scalar, in)) {
            return List.of(
                    scalar.sort() == Scalars.Sort.DIGEST_OF
                            ? new Edit.Rename(scalar.way(), name.after())
                            : new Edit.Put(scalar.way(), Value.text(name.after())));
        }
        if (in.shape() == Equipment.SHAPE && name instanceof NewRole) {
            String renamed = RoleTests.renamed(scalar.text(), name.before(), name.after());
            return renamed.equals(scalar.text()) ? List.of() : List.of(new Edit.Put(scalar.way(), Value.text(renamed)));
        }
        return List.of();
    }

    /** The old name is added before the new one is taken out, so that the list stays in its place. */
    private List<Edit> formerly(Steps formerly, List<Scalars.Scalar> scalars) {
        List<Edit> edits = new ArrayList<>(List.of(new Edit.Add(formerly, Value.text(name.before()))));
        scalars.stream()
                .filter(it -> it.way().within(formerly) && it.text().equals(name.after()))
                .findFirst()
                .ifPresent(it -> edits.add(new Edit.Remove(formerly.id(name.after()))));
        return edits;
    }

    /** Writes beside a thing what it was called. */
    static List<Edit> formerly(Steps record, String before) {
        return List.of(new Edit.Add(record.key("formerly"), Value.text(before)));
    }

    private void factTexts(String path) throws IOException {
        List<Edit> edits = new ArrayList<>();
        List<Scalars.Scalar> scalars = scalars(path, FactTexts.SHAPE, false);
        for (Scalars.Scalar scalar : scalars) {
            if (scalar.of() == FactText.SHAPE && scalar.key().equals(FactText.OF.name())) {
                name.moved(scalar.text()).ifPresent(moved -> edits.add(new Edit.Put(scalar.way(), Value.text(moved))));
            }
        }
        if (!edits.isEmpty()) {
            drafts.edit(path, false, edits, scalars.get(0).at());
        }
    }

    /** What is seen in a film, as if it were written in the description. */
    private static Scalars.Scalar seen(Located<String> cue) {
        return new Scalars.Scalar(
                Scalars.Sort.FACT,
                Steps.NONE,
                Chapter.SHAPE,
                Chapter.THING.name(),
                Chapter.THING.type(),
                cue.value(),
                cue.at());
    }

    private void cues(String path, Description in) throws IOException {
        Optional<SourceFile> file = folder.text(path, told -> {});
        List<Replacement> cues = file.stream()
                .flatMap(it -> Scalars.ofCues(it).stream())
                .filter(cue -> name.means(seen(cue), in))
                .map(cue -> new Replacement(cue.at(), name.before(), name.after()))
                .toList();
        if (!cues.isEmpty()) {
            drafts.replace(path, cues);
        }
    }

    private List<Scalars.Scalar> scalars(String path, Shape<?> shape, boolean head) {
        List<Finding> broken = new ArrayList<>();
        Optional<SourceFile> file = folder.named(path);
        return file.map(it -> head
                        ? HeadedText.of(it)
                                .map(text -> text.scalars(shape, broken::add))
                                .orElse(List.of())
                        : Scalars.of(it, shape, broken::add))
                .orElse(List.of());
    }
}
