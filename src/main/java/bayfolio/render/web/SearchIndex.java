package bayfolio.render.web;

import bayfolio.document.Content;
import bayfolio.document.Handbook;
import bayfolio.document.Node;
import bayfolio.document.NodeId;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.PlainText;
import bayfolio.document.Section;
import bayfolio.fact.Type;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the search on a phone looks through: the entries of the A to Z, each once with all its names, and the words of the
 * text behind it. The phone makes its index of it.
 */
final class SearchIndex {
    /** In which of them a reader looks: what to do, where it is, a figure, something wrong, a word. */
    private enum Group {
        DO,
        WHERE,
        NUMBER,
        TROUBLE,
        WORD;

        static Group of(PageKind kind) {
            return switch (kind) {
                case HOME, SITUATION, STAGE, PROCEDURE, PROCEDURES -> DO;
                case QUESTION, WORKED_OUT, NUMBERS, COUNTRY -> NUMBER;
                case GUIDE, SYMPTOM, TROUBLE_LIST -> TROUBLE;
                case WORDS -> WORD;
                default -> WHERE;
            };
        }
    }

    private static final Gson GSON = new GsonBuilder().disableHtmlEscaping().create();

    /** Shorter ones are no words to look for. */
    private static final int SHORTEST = 3;

    /** A word that stands in a larger share of all texts tells no page from another; of a thing it is kept. */
    private static final int MOST = 30;

    /**
     * One line of the file.
     *
     * @param also the other names, a line each
     * @param text the words of what stands there, each once, without those of its names
     */
    private record Entry(String title, String href, String group, String note, String also, String text) {}

    private SearchIndex() {}

    static byte[] of(Handbook handbook) {
        Map<NodeId, List<Content.LinkList.Entry>> entries = new LinkedHashMap<>();
        handbook.pages().stream()
                .filter(page -> page.kind() == PageKind.LETTER)
                .flatMap(Page::walk)
                .filter(Content.LinkList.Entry.class::isInstance)
                .map(Content.LinkList.Entry.class::cast)
                .forEach(entry -> handbook.addresses()
                        .of(entry.link().target())
                        .ifPresent(home -> entries.computeIfAbsent(home, it -> new ArrayList<>())
                                .add(entry)));
        Map<NodeId, Set<String>> texts = new HashMap<>();
        Map<String, Integer> common = new HashMap<>();
        entries.keySet().forEach(home -> {
            Set<String> words = words(text(handbook, home));
            texts.put(home, words);
            words.forEach(word -> common.merge(word, 1, Integer::sum));
        });
        List<Entry> lines = new ArrayList<>();
        entries.forEach((home, named) -> {
            String title = title(handbook, home);
            Set<String> also = new LinkedHashSet<>();
            String note = "";
            for (Content.LinkList.Entry entry : named) {
                if (entry.link().plain().equals(title)) {
                    note = entry.note();
                } else {
                    also.add(entry.link().plain());
                }
            }
            Set<String> naming = words(Stream.of(title, note, String.join("\n", also)));
            Page page = (Page) handbook.find(NodeId.of(home.page())).orElseThrow();
            Group group = Group.of(page.kind());
            lines.add(new Entry(
                    title,
                    WebSite.file(NodeId.of(home.page())) + (home.within().isEmpty() ? "" : "#" + home.within()),
                    Type.word(group),
                    note,
                    String.join("\n", also),
                    texts.getOrDefault(home, Set.of()).stream()
                            .filter(word -> !naming.contains(word))
                            .filter(word ->
                                    group == Group.WHERE || common.getOrDefault(word, 0) * MOST <= entries.size())
                            .sorted()
                            .collect(Collectors.joining(" "))));
        });
        return GSON.toJson(lines).getBytes(StandardCharsets.UTF_8);
    }

    private static String title(Handbook handbook, NodeId home) {
        Node node = handbook.find(home).orElseThrow();
        return node instanceof Page page ? page.title() : node instanceof Section section ? section.title() : "";
    }

    private static Stream<String> text(Handbook handbook, NodeId home) {
        Node node = handbook.find(home).orElseThrow();
        return node instanceof Page page
                ? PlainText.of(page)
                : node instanceof Section section ? PlainText.of(section) : Stream.of();
    }

    /** Runs of letters and digits. By an expression they took a thirtieth of the time of publishing. */
    private static Set<String> words(Stream<String> texts) {
        Set<String> words = new HashSet<>();
        texts.map(text -> text.toLowerCase(Locale.ROOT)).forEach(text -> {
            int from = 0;
            int at = 0;
            while (at <= text.length()) {
                int letter = at < text.length() ? text.codePointAt(at) : ' ';
                int next = at + Character.charCount(letter);
                if (!Character.isLetter(letter) && !isNumber(letter)) {
                    if (text.codePointCount(from, at) >= SHORTEST) {
                        words.add(text.substring(from, at));
                    }
                    from = next;
                }
                at = next;
            }
        });
        return words;
    }

    private static boolean isNumber(int letter) {
        int type = Character.getType(letter);
        return type == Character.DECIMAL_DIGIT_NUMBER
                || type == Character.LETTER_NUMBER
                || type == Character.OTHER_NUMBER;
    }
}
