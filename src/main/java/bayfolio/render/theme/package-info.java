/**
 * A theme: templates, style and screen words, from the fleet folder or built in. Begin at {@link
 * bayfolio.render.theme.Theme}.
 */
@NullMarked
package bayfolio.render.theme;

import org.jspecify.annotations.NullMarked;
