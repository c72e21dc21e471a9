/**
 * Issues editions of handbooks, tells what has changed since, and what that touches: pages, labels, pictures, sheets on board,
 * renters on their way.
 */
@NullMarked
package bayfolio.issue;

import org.jspecify.annotations.NullMarked;
