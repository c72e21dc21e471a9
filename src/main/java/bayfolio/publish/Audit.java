package bayfolio.publish;

import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * Reads what was rendered as a browser would and tells what is wrong with it: a link or fragment
 * that leads nowhere, an id given twice, a picture without words, more or fewer than one main
 * heading, no language, something loaded from elsewhere, a text that is for staff.
 */
public final class Audit {
    /** Attributes that make a browser load something, with the elements that have them. */
    private static final Map<String, List<String>> LOADING = Map.ofEntries(
            Map.entry("link", List.of("href")),
            Map.entry("script", List.of("src")),
            Map.entry("img", List.of("src")),
            Map.entry("source", List.of("src")),
            Map.entry("track", List.of("src")),
            Map.entry("input", List.of("src")),
            Map.entry("iframe", List.of("src")),
            Map.entry("video", List.of("src", "poster")),
            Map.entry("audio", List.of("src")),
            Map.entry("embed", List.of("src")),
            Map.entry("object", List.of("data")));

    private static final Pattern CSS_ADDRESS =
            Pattern.compile("(?:url\\(\\s*['\"]?|@import\\s*['\"])([^'\")]+)", Pattern.CASE_INSENSITIVE);

    /** Nobody reads a text in them, and a place in them is a moment. */
    private static final Pattern BINARY = Pattern.compile("\\.(jpg|mp4|webm)$");

    private static final Pattern SCHEME = Pattern.compile("^[a-z][a-z0-9+.-]*:");

    /** Schemes of links that a renter may follow off the site. */
    private static final Set<String> FOLLOWED = Set.of("tel:", "https:", "mailto:");

    /** From a page or a style to something else on the site. */
    record Link(String path, String href) {}

    /**
     * Links to what is not among the files that were looked at, by where they lead to: one each. Several threads may add to
     * it at once.
     */
    record Outside(String base, Map<String, Link> links) {
        /** @param base the path at the host that the site is published in, with a slash at both ends */
        Outside(String base) {
            this(base, new ConcurrentHashMap<>());
        }

        /**
         * What leads nowhere even when the whole site is there.
         *
         * @param site its files by their paths below its root; nothing where there is none
         */
        List<String> faults(Function<String, Optional<byte[]>> site) {
            List<String> faults = new ArrayList<>();
            new TreeMap<>(links).forEach((to, link) -> {
                int mark = to.indexOf('#');
                Optional<byte[]> file = site.apply(mark < 0 ? to : to.substring(0, mark));
                if (file.isEmpty()) {
                    faults.add(link.path + ": " + noFile(link.href));
                } else if (mark >= 0
                        && Jsoup.parse(new String(file.get(), StandardCharsets.UTF_8)).select("[id]").stream()
                                .noneMatch(it -> it.id().equals(to.substring(mark + 1)))) {
                    faults.add(link.path + ": " + noPlace(link.href));
                }
            });
            return faults;
        }
    }

    private final Map<String, byte[]> files;
    private final Phrases staffTexts;
    private final Map<String, Set<String>> ids = new HashMap<>();
    private final List<Link> links = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();
    private final Outside outside;

    /** Where links lead to, by the folder they stand in and what they say. */
    private final Map<String, URI> resolved = new HashMap<>();

    private Audit(Map<String, byte[]> files, Phrases staffTexts, Outside outside) {
        this.files = files;
        this.staffTexts = staffTexts;
        this.outside = outside;
    }

    /**
     * @param files by path below the root of the site
     * @param staffTexts texts that must not be found in any file
     * @return one sentence for each fault, the path first; empty for a sound site
     */
    public static List<String> of(Map<String, byte[]> files, Set<String> staffTexts) {
        Outside outside = new Outside("/");
        List<String> faults = new ArrayList<>(of(files, new Phrases(staffTexts), outside));
        faults.addAll(outside.faults(path -> Optional.empty()));
        return faults;
    }

    /**
     * The same of a part of a site.
     *
     * @param outside gets the links that lead out of it
     */
    static List<String> of(Map<String, byte[]> files, Phrases staffTexts, Outside outside) {
        return new Audit(files, staffTexts, outside).run();
    }

    private List<String> run() {
        files.forEach((path, bytes) -> {
            if (path.endsWith(".html")) {
                page(path, Jsoup.parse(new String(bytes, StandardCharsets.UTF_8)));
            } else if (path.endsWith(".css")) {
                style(path, new String(bytes, StandardCharsets.UTF_8));
            }
            if (!path.endsWith(".html") && !staffTexts.isEmpty()) {
                staff(
                        path,
                        BINARY.matcher(path).find() ? "" : Phrases.spaced(new String(bytes, StandardCharsets.UTF_8)));
            }
        });
        // Whether a link leads to a place on a page is known when all pages are; no page is kept until then.
        links.forEach(link -> resolves(link.path, link.href));
        return List.copyOf(faults);
    }

    private void page(String path, Document page) {
        Element html = page.selectFirst("html");
        if (html == null || html.attr("lang").isBlank()) {
            fault(path, "no language is set");
        }
        Set<String> seen = new HashSet<>();
        int headings = 0;
        StringBuilder data = new StringBuilder();
        for (Element element : page.getAllElements()) {
            element(path, element);
            headings += element.normalName().equals("h1") ? 1 : 0;
            if (element.hasAttr("id") && !seen.add(element.id())) {
                fault(path, "the id `" + element.id() + "` is given twice");
            }
            if (!staffTexts.isEmpty()) {
                element.attributes().forEach(attribute -> data.append('\n').append(attribute.getValue()));
                data.append('\n').append(element.data());
            }
        }
        ids.put(path, seen);
        if (headings != 1) {
            fault(path, "there are " + headings + " main headings, not one");
        }
        if (page.title().isBlank()) {
            fault(path, "there is no title");
        }
        if (!staffTexts.isEmpty()) {
            // What a reader or a program finds in a page: its text, its attributes, its data.
            staff(path, page.text() + data);
        }
    }

    /** Once through the page: each question that went through it by itself took as long as reading it. */
    private void element(String path, Element element) {
        String name = element.normalName();
        if (name.equals("img") && element.attr("alt").isBlank()) {
            fault(path, "the picture `" + element.attr("src") + "` has no words for those who cannot see it");
        }
        if (name.equals("style")) {
            style(path, element.data());
        }
        if (element.hasAttr("style")) {
            style(path, element.attr("style"));
        }
        for (String attribute : LOADING.getOrDefault(name, List.of())) {
            if (element.hasAttr(attribute)) {
                loaded(path, element.attr(attribute));
            }
        }
        if (element.hasAttr("srcset")) {
            for (String candidate : element.attr("srcset").strip().split("\\s*,\\s+", -1)) {
                loaded(path, candidate.replaceFirst("\\s.*", ""));
            }
        }
        if (name.equals("a")) {
            link(path, element);
        }
    }

    private void link(String path, Element link) {
        if (!link.hasAttr("href") || link.attr("href").isBlank()) {
            fault(path, "the link `" + link.text() + "` leads nowhere");
            return;
        }
        if (link.text().isBlank() && link.select("img").isEmpty()) {
            fault(path, "a link to `" + link.attr("href") + "` has no words");
        }
        String href = link.attr("href");
        Optional<String> scheme = scheme(href);
        if (scheme.isEmpty()) {
            links.add(new Link(path, href));
        } else if (!FOLLOWED.contains(scheme.get())) {
            fault(path, "the link `" + href + "` is no address that a renter can follow");
        }
    }

    private void loaded(String path, String address) {
        Optional<String> scheme = scheme(address);
        if (scheme.isEmpty()) {
            links.add(new Link(path, address));
        } else if (!scheme.get().equals("data:")) {
            fault(path, "`" + address + "` would be loaded from outside the site");
        }
    }

    /** What an address begins with if it leads off the site: {@code tel:}, or {@code //}. */
    private static Optional<String> scheme(String address) {
        String lower = address.strip().toLowerCase(Locale.ROOT);
        Matcher scheme = SCHEME.matcher(lower);
        if (scheme.find()) {
            return Optional.of(scheme.group());
        }
        return lower.startsWith("//") ? Optional.of("//") : Optional.empty();
    }

    private void resolves(String path, String href) {
        try {
            String folder = path.substring(0, path.lastIndexOf('/') + 1);
            // A link within a page begins with its mark.
            String at = href.startsWith("#") ? path : folder;
            URI target = resolved.get(at + "\n" + href);
            if (target == null) {
                target = new URI(outside.base + at).resolve(new URI(href));
                resolved.put(at + "\n" + href, target);
            }
            String file = target.getPath().startsWith(outside.base)
                    ? target.getPath().substring(outside.base.length())
                    : target.getPath();
            String found = file.isEmpty() || file.endsWith("/") ? file + "index.html" : file;
            boolean within =
                    target.getFragment() != null && !BINARY.matcher(found).find();
            if (!files.containsKey(found)) {
                outside.links.putIfAbsent(found + (within ? "#" + target.getFragment() : ""), new Link(path, href));
            } else if (within && !ids.getOrDefault(found, Set.of()).contains(target.getFragment())) {
                fault(path, noPlace(href));
            }
        } catch (URISyntaxException e) {
            fault(path, "the link `" + href + "` is no address");
        }
    }

    private static String noFile(String href) {
        return "the link `" + href + "` leads to no file of the site";
    }

    private static String noPlace(String href) {
        return "the link `" + href + "` leads to a place that is not on that page";
    }

    private void style(String path, String css) {
        Matcher address = CSS_ADDRESS.matcher(css);
        while (address.find()) {
            loaded(path, address.group(1).strip());
        }
    }

    private void staff(String path, String text) {
        for (String staff : staffTexts.in(path + "\n" + text)) {
            fault(path, "a text for staff stands on it: `" + staff + "`");
        }
    }

    private void fault(String path, String what) {
        faults.add(path + ": " + what);
    }
}
