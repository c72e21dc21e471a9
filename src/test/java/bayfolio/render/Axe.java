package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/**
 * The rules of axe-core that our pages keep, and what somebody has looked at where they cannot decide.
 *
 * @param script the engine, to be run in a page
 * @param reviewed patterns of what it cannot decide, and what is right
 */
record Axe(String script, Set<String> reviewed) {
    static Axe read() throws IOException {
        Set<String> reviewed = new TreeSet<>();
        resource("/bayfolio/axe/reviewed.txt")
                .lines()
                .filter(line -> !line.startsWith("#") && !line.isBlank())
                .forEach(reviewed::add);
        return new Axe(resource("/axe.min.js"), reviewed);
    }

    private static String resource(String path) throws IOException {
        try (InputStream in = Objects.requireNonNull(Axe.class.getResourceAsStream(path), path)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** What is undecided counts as broken, unless somebody has looked at it. */
    List<String> broken(OpenSite site, Iterable<String> pages) {
        List<String> broken = new ArrayList<>();
        for (String page : pages) {
            site.browser().get(site.origin() + page);
            assertThat(site.browser().getTitle()).as(page).isNotEmpty();
            Object found = site.browser().executeAsyncScript(script + """
                    ;
                    const done = arguments[arguments.length - 1];
                    // Whatever may be opened is looked at, too; nothing lies under the bar, and no table is cut.
                    document.querySelectorAll('details').forEach(it => it.open = true);
                    document.querySelectorAll('.bar').forEach(it => it.style.position = 'static');
                    document.querySelector('main').style.maxWidth = 'none';
                    axe.run(document, {
                      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
                      rules: {
                        'color-contrast-enhanced': { enabled: true },
                        'identical-links-same-purpose': { enabled: true },
                        'meta-refresh-no-exceptions': { enabled: true },
                      },
                      resultTypes: ['violations', 'incomplete'],
                    }).then(
                      all => done([...all.violations, ...all.incomplete].flatMap(
                        rule => rule.nodes.map(node => rule.id + ' | ' + node.target.join(' ') + ' | ' + node.html.slice(0, 120) + ' | ' + node.any.concat(node.all).map(why => why.message).join(' ')))),
                      error => done([String(error)]));
                    """);
            for (Object each : (List<?>) Objects.requireNonNull(found)) {
                if (reviewed.stream().noneMatch(known -> (page + " | " + each).matches(known))) {
                    broken.add(page + " | " + each);
                }
            }
        }
        return broken;
    }
}
