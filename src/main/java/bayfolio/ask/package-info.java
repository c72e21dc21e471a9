/**
 * Answers to "which coaches have it, with which value, from which file", in the words of conditions of procedures. Begin at
 * {@link bayfolio.ask.Asked}.
 */
@NullMarked
package bayfolio.ask;

import org.jspecify.annotations.NullMarked;
