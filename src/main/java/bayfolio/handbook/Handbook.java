package bayfolio.handbook;

import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.List;
import java.util.stream.Stream;

/**
 * All that is published for one coach. No link in it leads nowhere: one that would cannot be
 * composed.
 */
public final class Handbook {
    private final Copy copy;
    private final String unit;
    private final String name;
    private final String language;
    private final List<Page> pages;
    private final AddressBook addresses;

    /**
     * @param unit id of the coach; its folder on the site
     * @throws IllegalArgumentException naming a link whose target has no home
     */
    public Handbook(Copy copy, String unit, String name, String language, List<Page> pages) {
        this.copy = copy;
        this.unit = unit;
        this.name = name;
        this.language = language;
        this.pages = List.copyOf(pages);
        this.addresses = new AddressBook(pages);
        for (Page page : pages) {
            links(page)
                    .map(Inline.Link::target)
                    .filter(target -> !(target instanceof Target.OfPhone)
                            && addresses.of(target).isEmpty())
                    .findFirst()
                    .ifPresent(target -> {
                        throw new IllegalArgumentException(
                                page.path() + " of " + unit + " links to " + target + ", which has no home");
                    });
        }
    }

    private static Stream<Inline.Link> links(Page page) {
        return Stream.concat(
                        page.opening().stream(),
                        page.sections().stream().flatMap(section -> section.contents().stream()))
                .flatMap(Content::linked);
    }

    public Copy copy() {
        return copy;
    }

    public String unit() {
        return unit;
    }

    public String name() {
        return name;
    }

    public String language() {
        return language;
    }

    public List<Page> pages() {
        return pages;
    }

    public AddressBook addresses() {
        return addresses;
    }
}
