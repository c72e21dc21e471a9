/** Rules about sense: figures that can be, facts that agree with each other. Begin with {@link Figures}. */
@NullMarked
package bayfolio.check.sense;

import org.jspecify.annotations.NullMarked;
