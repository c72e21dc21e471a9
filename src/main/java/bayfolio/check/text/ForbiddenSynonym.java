package bayfolio.check.text;

import bayfolio.check.FleetRule;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.Word;
import bayfolio.procedure.Library;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Flags a word that the glossary says to avoid, in a text that American renters read. */
public final class ForbiddenSynonym implements FleetRule {
    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        Map<String, String> instead = new HashMap<>();
        for (Word word : fleet.words()) {
            if (word.facts().whole()) {
                word.facts()
                        .all(Word.AVOID)
                        .forEach(avoided -> instead.putIfAbsent(avoided.toLowerCase(Locale.ROOT), word.word()));
            }
        }
        if (instead.isEmpty()) {
            return Stream.of();
        }
        Pattern avoided = Pattern.compile(
                "(?<![\\w-])(?:"
                        + instead.keySet().stream().sorted().map(Pattern::quote).collect(Collectors.joining("|"))
                        + ")(?![\\w-])",
                Pattern.CASE_INSENSITIVE);
        return Text.of(fleet, library)
                .filter(text -> text.forRenters() && text.american() && !text.plate())
                .flatMap(text -> avoided.matcher(text.own()).results().map(part -> finding(text, part, instead)));
    }

    private static Finding finding(Text text, MatchResult part, Map<String, String> instead) {
        String word = Objects.requireNonNull(instead.get(part.group().toLowerCase(Locale.ROOT)));
        return Finding.warning(
                        "forbidden-synonym",
                        text.at(part),
                        "`" + text.typed(part) + "` is another word for `" + word + "`")
                .mend("Write `" + word + "`, as the glossary does.");
    }
}
