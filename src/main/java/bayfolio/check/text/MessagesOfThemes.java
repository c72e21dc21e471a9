package bayfolio.check.text;

import bayfolio.catalog.Catalogs;
import bayfolio.catalog.Message;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** What is wrong with the words of a theme: messages that there are not, that cannot be read, or that lack something. */
public final class MessagesOfThemes {
    private static final int FEW = 2;

    private MessagesOfThemes() {}

    /** Of the files of a fleet; a test does the same with those that the program carries. */
    public static Stream<Finding> check(Catalogs catalogs) {
        return all(catalogs, false);
    }

    static Stream<Finding> all(Catalogs catalogs, boolean builtIn) {
        return catalogs.languages().stream()
                .flatMap(language -> catalogs.files(language).stream()
                        .filter(file -> file.builtIn() == builtIn)
                        .flatMap(file -> new InFile(
                                        catalogs,
                                        language,
                                        file,
                                        known(catalogs, language),
                                        Catalogs.pluralForms(language))
                                .findings()));
    }

    /** The messages that a file of a language may say otherwise. */
    private static Set<String> known(Catalogs catalogs, String language) {
        Set<String> known = new TreeSet<>();
        catalogs.files(Catalogs.ENGLISH).stream()
                .filter(words -> words.builtIn() || !language.equals(Catalogs.ENGLISH))
                .forEach(words -> known.addAll(words.messages().keySet()));
        return known;
    }

    private record InFile(
            Catalogs catalogs, String language, Catalogs.Words file, Set<String> known, Set<String> forms) {
        Stream<Finding> findings() {
            Map<String, Located<String>> sorted = new TreeMap<>(file.messages());
            return Stream.concat(
                            sorted.entrySet().stream().flatMap(each -> message(each.getKey(), each.getValue())),
                            lacking().stream())
                    .sorted(Comparator.comparing(Finding::at));
        }

        private boolean english() {
            return language.equals(Catalogs.ENGLISH);
        }

        private Stream<Finding> message(String key, Located<String> pattern) {
            if (!known.contains(key)) {
                List<String> near = NearNames.to(key, known);
                // A theme with templates of its own may have words of its own.
                return english() && near.isEmpty()
                        ? Stream.empty()
                        : Stream.of(Finding.error(
                                        "unknown-message", part(pattern.at(), key), "there is no message `" + key + "`")
                                .near(near)
                                .mend("Take it out, or name one that there is."));
            }
            Message message;
            try {
                message = Message.of(pattern.value());
            } catch (IllegalArgumentException broken) {
                return Stream.of(Finding.error(
                                "broken-message",
                                pattern.at(),
                                "the message `" + key + "` cannot be read: " + sentence(broken))
                        .mend("Write a value as {name}, and a choice as {name, plural, one {…} other {…}}."));
            }
            List<Finding> findings = new ArrayList<>();
            values(key, message, pattern.at()).ifPresent(findings::add);
            Set<String> missing = message.missing(forms);
            if (!missing.isEmpty()) {
                findings.add(Finding.error(
                                "plural-form-missing",
                                pattern.at(),
                                "a plural of the message `" + key + "` lacks " + String.join(" and ", quoted(missing)))
                        .mend("The language `" + language + "` needs " + String.join(", ", quoted(forms)) + "."));
            }
            return findings.stream();
        }

        /** Values that nothing gives to a message of that name. */
        private Optional<Finding> values(String key, Message message, Place at) {
            Set<String> given = catalogs.english(key)
                    .map(Located::value)
                    .map(Message::of)
                    .map(Message::arguments)
                    .orElse(Set.of());
            return message.arguments().stream()
                    .filter(name -> !given.contains(name))
                    .findFirst()
                    .map(name -> Finding.error(
                                    "broken-message",
                                    part(at, name),
                                    "the message `" + key + "` gets no value `" + name + "`")
                            .near(NearNames.to(name, given))
                            .mend(
                                    given.isEmpty()
                                            ? "It gets none."
                                            : "It gets " + String.join(", ", quoted(given)) + "."));
        }

        /** Where a word of a message stands; the whole message where it goes over several lines. */
        private static Place part(Place message, String word) {
            String line = message.file().line(message.line());
            int brace = line.indexOf("{" + word);
            int at = brace < 0 ? line.indexOf(word) : brace + 1;
            return at < 0
                    ? message
                    : Place.of(
                            message.file(),
                            message.line(),
                            1 + line.codePointCount(0, at),
                            word.codePointCount(0, word.length()));
        }

        /** A regional file says only what is otherwise there. */
        private Optional<Finding> lacking() {
            if (english() || !Catalogs.main(language).equals(language)) {
                return Optional.empty();
            }
            Set<String> lacking = new TreeSet<>(known);
            catalogs.files(language)
                    .forEach(words -> lacking.removeAll(words.messages().keySet()));
            String first = String.join(", ", quoted(lacking.stream().limit(FEW).toList()));
            return lacking.isEmpty()
                    ? Optional.empty()
                    : file.messages().values().stream()
                            .map(Located::at)
                            .min(Comparator.naturalOrder())
                            .map(at -> Finding.warning(
                                            "missing-message",
                                            at,
                                            "the words of `" + language + "` lack " + first
                                                    + (lacking.size() > FEW ? " and others" : ""))
                                    .mend("Readers get them in English until they are there."));
        }

        private static String sentence(IllegalArgumentException broken) {
            return String.valueOf(broken.getMessage())
                    .replaceAll(":? *\\[at pattern index \\d+]", " at")
                    .replaceAll("\\s+", " ")
                    .strip();
        }

        private static List<String> quoted(Iterable<String> names) {
            List<String> quoted = new ArrayList<>();
            names.forEach(name -> quoted.add("`" + name + "`"));
            return quoted;
        }
    }
}
