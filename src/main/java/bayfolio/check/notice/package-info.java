/** What is to be known meanwhile: whether it still holds, and whether it is about anything. */
@NullMarked
package bayfolio.check.notice;

import org.jspecify.annotations.NullMarked;
