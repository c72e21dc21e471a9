/**
 * Issued states of handbooks, and what is otherwise between two of them, by meaning. A state is the facts of a coach and the
 * normal form of its document; an edition is one of them with a number, a day and a note, kept as a file beside the coach.
 */
@NullMarked
package bayfolio.edition;

import org.jspecify.annotations.NullMarked;
