package bayfolio.document;

import bayfolio.model.Photo;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * All that is known of one coach, for all readers; or what one of them sees of it. No link in it leads nowhere, no two
 * parts have one name: one that would cannot be composed.
 */
public final class Handbook {
    private final String unit;
    private final Cover cover;
    private final String language;
    private final List<Part> parts;
    private final Map<Target, List<Sketch>> sketches;
    private final Optional<Audience> reader;

    /** Of which it is what a reader sees. */
    private final Optional<Handbook> whole;

    private final SortedMap<NodeId, NodeId> formerly;
    private final Optional<Revision> revision;
    private final AddressBook addresses;
    private final Map<NodeId, Node> nodes = new HashMap<>();
    private final Map<Audience, Handbook> copies = new ConcurrentHashMap<>();

    /** What pages say, which is asked for more than once; most are the same ones in all copies. */
    private final Map<Page, String> read;

    /** Worked out when it is first asked for. */
    private @Nullable String edition;

    /**
     * By what a coach is told from others.
     *
     * @param number painted on it; may be empty
     * @param kind how it is built
     * @param photo that stands for it
     */
    public record Cover(String name, String number, String kind, Optional<Photo> photo) {
        boolean reads(Cover other) {
            return name.equals(other.name)
                    && number.equals(other.number)
                    && kind.equals(other.kind)
                    && photo.map(Photo::id).equals(other.photo.map(Photo::id))
                    && photo.map(Photo::alt).equals(other.photo.map(Photo::alt));
        }
    }

    /** Pages that belong together, in the order of a book. */
    public record Part(String id, List<Page> pages) {
        public Part {
            pages = List.copyOf(pages);
        }
    }

    /**
     * @param unit id of the coach
     * @param sketches of things, for whoever shows one
     * @param formerly names that pages and sections had before, with the one in it that each leads on to
     * @throws IllegalArgumentException naming a link whose target has no home, or a name that is given twice
     */
    public Handbook(
            String unit,
            Cover cover,
            String language,
            List<Part> parts,
            Map<Target, List<Sketch>> sketches,
            Map<NodeId, NodeId> formerly) {
        this(
                unit,
                cover,
                language,
                parts,
                sketches,
                formerly,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Collections.synchronizedMap(new IdentityHashMap<>()));
    }

    /**
     * The same with which edition it is.
     *
     * @param page that tells readers what has changed; it belongs to no edition
     */
    public Handbook revised(Revision as, Page page) {
        List<Part> more = parts.stream()
                .map(part -> part.id().equals(page.kind().part())
                        ? new Part(
                                part.id(),
                                Stream.concat(part.pages().stream(), Stream.of(page))
                                        .toList())
                        : part)
                .toList();
        // Of which state it is does not depend on the page about it.
        String same = edition();
        Handbook revised =
                new Handbook(unit, cover, language, more, sketches, formerly, Optional.of(as), reader, whole, read);
        revised.edition = as.asIssued() ? String.valueOf(as.edition()) : as.edition() + "-" + same;
        return revised;
    }

    /** Empty where no edition of it was issued. */
    public Optional<Revision> revision() {
        return revision;
    }

    /** Whether a part says something else than in the edition before. */
    public boolean changed(NodeId part) {
        return revision.filter(it -> it.changed().contains(part)).isPresent();
    }

    private Handbook(
            String unit,
            Cover cover,
            String language,
            List<Part> parts,
            Map<Target, List<Sketch>> sketches,
            Map<NodeId, NodeId> formerly,
            Optional<Revision> revision,
            Optional<Audience> reader,
            Optional<Handbook> whole,
            Map<Page, String> read) {
        this.unit = unit;
        this.cover = cover;
        this.language = language;
        this.parts = List.copyOf(parts);
        this.reader = reader;
        this.whole = whole;
        this.revision = revision;
        this.read = read;
        List<Node> all = walk().toList();
        this.addresses = new AddressBook(all);
        for (Node node : all) {
            if (nodes.putIfAbsent(node.id(), node) != null) {
                throw new IllegalArgumentException("two parts of the handbook of " + unit + " are named " + node.id());
            }
        }
        nodes.values().forEach(this::complete);
        this.formerly = new TreeMap<>(NodeId.ORDER);
        formerly.forEach((old, home) -> {
            if (nodes.containsKey(home) && !nodes.containsKey(old)) {
                this.formerly.put(old, home);
            }
        });
        // What a reader sees nothing of is not drawn for him.
        this.sketches = sketches.entrySet().stream()
                .filter(each -> reader.isEmpty() || addresses.of(each.getKey()).isPresent())
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private void complete(Node node) {
        node.links(link -> {
            Target target = link.target();
            if (!(target instanceof Target.OfPhone) && addresses.of(target).isEmpty()) {
                throw new IllegalArgumentException(
                        node.id() + " of " + unit + " links to " + target + ", which has no home");
            }
        });
        if (node instanceof Content.Quote quote && !(nodes.get(quote.page()) instanceof Page)) {
            throw new IllegalArgumentException(
                    node.id() + " of " + unit + " quotes " + quote.page() + ", which is no page of it");
        }
    }

    /** What a reader sees of it: {@link Audience#RENTERS} or {@link Audience#STAFF}. */
    public Handbook seenBy(Audience reader) {
        return copies.computeIfAbsent(reader, this::copy);
    }

    private Handbook copy(Audience reader) {
        List<Part> seen = new ArrayList<>();
        for (Part part : parts) {
            List<Page> pages = Node.seen(part.pages(), reader, (page, it) -> Optional.of(page.seenBy(it)));
            if (!pages.isEmpty()) {
                seen.add(new Part(part.id(), pages));
            }
        }
        return new Handbook(
                unit,
                cover,
                language,
                seen,
                sketches,
                formerly,
                revision,
                Optional.of(reader),
                Optional.of(whole.orElse(this)),
                read);
    }

    /** Whether readers get the same of both, but for what nobody is shown: what it was made of. */
    public boolean reads(Handbook other) {
        return cover.reads(other.cover)
                && language.equals(other.language)
                && parts.equals(other.parts)
                && formerly.equals(other.formerly)
                && reads(revision, other.revision)
                && sketches.equals(other.sketches);
    }

    /** Whether readers see the same of two revisions: of parts that are not theirs they see no change. */
    private boolean reads(Optional<Revision> one, Optional<Revision> other) {
        return one.map(it -> seen(it)).equals(other.map(it -> seen(it)));
    }

    private Revision seen(Revision it) {
        return new Revision(
                it.edition(),
                it.day(),
                it.asIssued(),
                it.changed().stream().filter(nodes::containsKey).collect(Collectors.toSet()));
    }

    /** What a reader reads on a page of it, in its normal form. */
    public String asRead(Page page) {
        return read.computeIfAbsent(page, DocumentJson::asRead);
    }

    /** Which state of it this is, the same for all its readers. */
    public synchronized String edition() {
        if (whole.isPresent()) {
            return whole.get().edition();
        }
        String known = edition;
        if (known == null) {
            known = Fingerprint.of(seenBy(Audience.RENTERS));
            edition = known;
        }
        return known;
    }

    /** Whose copy it is; nobody's where it holds all. */
    public Optional<Audience> reader() {
        return reader;
    }

    /** Pages that staff send links to, the same for all its readers: a short address is for whoever is told it. */
    public List<Content.Sendable> sendable() {
        return whole.orElse(this)
                .walk()
                .filter(Content.Sendable.class::isInstance)
                .map(Content.Sendable.class::cast)
                .toList();
    }

    public String unit() {
        return unit;
    }

    public String name() {
        return cover.name();
    }

    public Cover cover() {
        return cover;
    }

    public String language() {
        return language;
    }

    public List<Part> parts() {
        return parts;
    }

    public List<Page> pages() {
        return parts.stream().flatMap(part -> part.pages().stream()).toList();
    }

    /** All of its nodes, in reading order. */
    public Stream<Node> walk() {
        return pages().stream().flatMap(Node::walk);
    }

    public Optional<Node> find(NodeId id) {
        return Optional.ofNullable(nodes.get(id));
    }

    /** Names that pages and sections had before, with those that they have now. */
    public SortedMap<NodeId, NodeId> formerly() {
        return Collections.unmodifiableSortedMap(formerly);
    }

    /** Where a thing is, and how it looks. */
    public List<Sketch> sketches(Target thing) {
        return sketches.getOrDefault(thing, List.of());
    }

    /** All small drawings. */
    public Stream<Sketch> sketches() {
        return sketches.values().stream().flatMap(List::stream);
    }

    public AddressBook addresses() {
        return addresses;
    }
}
