package bayfolio.issue;

import bayfolio.edition.Changed;
import java.util.stream.Stream;

/** Tells what follows from a change in one respect; none of them knows another. */
interface Consequent {
    Stream<? extends Consequence> of(Changed changed);
}
