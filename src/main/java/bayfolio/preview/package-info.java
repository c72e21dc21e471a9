/**
 * The handbooks of a fleet while somebody writes them, on this computer alone. Begin at {@link bayfolio.preview.Preview}.
 */
@NullMarked
package bayfolio.preview;

import org.jspecify.annotations.NullMarked;
