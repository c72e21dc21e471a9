package bayfolio.render;

import bayfolio.document.Audience;
import bayfolio.document.Handbook;
import bayfolio.document.OldAddresses;
import bayfolio.document.Overview;
import bayfolio.document.Today;
import bayfolio.edition.AsPrinted;
import bayfolio.template.TemplateProblem;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.function.Function;

/**
 * One way to give out handbooks: a document, with the words of a language and a theme, into files. Each is a package of
 * its own, and a line in the list of outputs.
 */
public interface Output {
    /** What is wrong with what it is made with; nothing is published then. */
    List<TemplateProblem> complaints();

    /** Whether it is made of the copy of a reader, who is {@link Audience#RENTERS} or {@link Audience#STAFF}. */
    boolean of(Audience reader);

    /**
     * The files of one coach.
     *
     * @param handbook as a reader sees it
     * @param media those that this reader gets
     * @param around what is there already
     * @return by path below the root of the readers' files
     */
    Map<String, byte[]> files(Handbook handbook, Media media, Around around);

    /**
     * What those files are made of, by their paths, where that is sooner compared than the files: as much of it as hangs on
     * the document. Nothing where they are compared themselves.
     */
    default Optional<Map<String, byte[]>> sources(Handbook handbook, Media media) {
        return Optional.empty();
    }

    /**
     * What is there already of a coach for a reader, by path below the root.
     *
     * @param beside what other outputs have made of this state of it
     * @param before what was given out last
     * @param old addresses that were given out once
     * @param inBinder the book of the edition before, where it is known how it was printed
     */
    record Around(
            Map<String, byte[]> beside,
            Function<String, Optional<byte[]>> before,
            OldAddresses old,
            Optional<AsPrinted> inBinder) {
        /** Nothing is there. */
        public static final Around NOTHING =
                new Around(Map.of(), path -> Optional.empty(), OldAddresses.NONE, Optional.empty());
    }

    /** The files that all coaches share, and those about all of them. */
    default Map<String, byte[]> shared(Whole fleet) {
        return Map.of();
    }

    /**
     * What a reader gets of a fleet as a whole.
     *
     * @param coaches those that have a handbook there
     * @param today what the day needs; for staff alone, as what follows
     * @param overviews pages of all of them
     * @param led old addresses of coaches that have another id by now, with what each leads on to: {@code knot/do/level}
     * @param left coaches that are no longer there
     */
    record Whole(
            List<Entry> coaches,
            Optional<Today> today,
            List<Overview> overviews,
            SortedMap<String, String> led,
            List<Gone> left) {
        public Whole {
            coaches = List.copyOf(coaches);
            overviews = List.copyOf(overviews);
            led = Collections.unmodifiableSortedMap(led);
            left = List.copyOf(left);
        }

        public boolean isForStaff() {
            return today.isPresent();
        }

        public static Whole forRenters(List<Entry> coaches) {
            return new Whole(coaches, Optional.empty(), List.of(), Collections.emptySortedMap(), List.of());
        }
    }

    /**
     * A coach that is no longer there.
     *
     * @param text what became of it; may be empty, where there is one instead
     * @param instead id of the coach that readers are led to; may be empty
     * @param addresses all that this reader was ever given
     */
    record Gone(String unit, String name, String text, String instead, SortedSet<String> addresses) {
        public Gone {
            addresses = Collections.unmodifiableSortedSet(addresses);
        }
    }

    /**
     * What stays of a coach that is not made anew, beside the files in its folder; nothing where it was not given out in
     * this way.
     *
     * @param own each of its files, by path below the root
     */
    default Optional<Kept> kept(String unit, Function<String, Optional<byte[]>> own) {
        return Optional.empty();
    }

    /** @param needed the folder of shared files that its own refer to, below the root */
    record Kept(Entry entry, String needed) {}

    /**
     * A coach in the list of the fleet.
     *
     * @param number painted on it; may be empty
     * @param kind how it is built, in the words of its readers; may be empty
     * @param picture path of one below the root; empty where there is none
     * @param shows what is seen on it
     */
    record Entry(String unit, String name, String number, String kind, String picture, String shows) {}
}
