package bayfolio.start;

import bayfolio.finding.Finding;
import bayfolio.model.FleetFacts;
import bayfolio.model.Phone;
import bayfolio.read.Edit;
import bayfolio.read.FleetReader;
import bayfolio.read.Folder;
import bayfolio.read.Ledger;
import bayfolio.read.Rewrite;
import bayfolio.read.RewriteException;
import bayfolio.read.Value;
import bayfolio.source.SourceFile;
import bayfolio.source.Steps;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The file of a fleet that does not exist yet.
 *
 * @param text passes the check
 */
public record NewFleet(String text) {
    /** What is asked for, in this order. */
    public enum Fact {
        NAME("fleet-name", "Name of the fleet", "name"),
        BASE_ADDRESS(
                "base-address",
                "Where its handbooks will be published, such as https://handbook.example",
                "base-address"),
        COUNTRY("country", "Country, by the name of a file in units/shared/countries, such as us", "country"),
        LANGUAGE("language", "Language of the handbooks, such as en-US", "languages"),
        PHONE("phone", "Phone while somebody is there, such as +1 555-0100", "hours"),
        AFTER_HOURS_PHONE("after-hours-phone", "Phone for evenings and nights", "after-hours"),
        ROADSIDE_PHONE("roadside-phone", "Phone for when the coach cannot go on", "roadside"),
        ADDRESS("address", "Address of the depot", "address");

        private final String option;
        private final String question;
        private final String key;

        Fact(String option, String question, String key) {
            this.option = option;
            this.question = question;
            this.key = key;
        }

        public String option() {
            return option;
        }

        public String question() {
            return question;
        }
    }

    /**
     * @param facts all of them
     * @throws StartException where one of them cannot be, or there is a fleet already
     */
    public static NewFleet of(Folder folder, Map<Fact, String> facts) throws StartException {
        if (folder.has(FleetReader.FLEET)) {
            throw new StartException("There is a fleet here already: `" + FleetReader.FLEET + "`.");
        }
        List<Edit> edits = new ArrayList<>();
        facts.forEach((fact, value) -> edits.add(edit(fact, value)));
        SourceFile least = new SourceFile(FleetReader.FLEET, FleetReader.LEAST_FLEET);
        try {
            SourceFile file = new SourceFile(FleetReader.FLEET, Rewrite.of(least, edits));
            List<String> countries = folder.countries();
            String country = facts.getOrDefault(Fact.COUNTRY, "");
            if (!countries.contains(country)) {
                throw new StartException("There is no country `" + country + "`: there is "
                        + String.join(", ", countries) + ", or a file of your own in `units/shared/countries`.");
            }
            List<Finding> findings = FleetReader.faults(file);
            if (!findings.isEmpty()) {
                throw new StartException(findings.get(0).message()
                        + findings.get(0).mend().map(mend -> ". " + mend).orElse("."));
            }
            return new NewFleet("# yaml-language-server: $schema=shared/fleet.schema.json\n" + file.text());
        } catch (RewriteException e) {
            throw new StartException("That cannot be written: " + e.getMessage());
        }
    }

    private static Edit edit(Fact fact, String value) {
        return switch (fact) {
            case NAME, BASE_ADDRESS, COUNTRY, ADDRESS -> new Edit.Put(Steps.of(fact.key), Value.text(value));
            case LANGUAGE -> new Edit.Put(Steps.of(fact.key), Value.list(value));
            case PHONE, AFTER_HOURS_PHONE, ROADSIDE_PHONE ->
                new Edit.Put(
                        Steps.of(FleetFacts.PHONES.name()).id(fact.key).key(Phone.NUMBER.name()), Value.text(value));
        };
    }

    /** Beside it, what editors complete by, and how git merges the addresses of two hands. */
    public void write(Folder folder) throws IOException {
        Path file = folder.root().resolve(FleetReader.FLEET);
        Files.createDirectories(file.toAbsolutePath().getParent());
        Files.writeString(file, text, StandardOpenOption.CREATE_NEW);
        folder.writeSchemas();
        Path merging = folder.root().resolve(".gitattributes");
        if (!Files.exists(merging)) {
            Files.writeString(merging, Ledger.MERGED, StandardOpenOption.CREATE_NEW);
        }
    }
}
