/**
 * Mustache with nothing let slip: every name must be known, and every piece of what comes out knows
 * the place that it was written at. Used for procedures and for themes. Begin at {@link
 * bayfolio.template.Template}.
 */
@NullMarked
package bayfolio.template;

import org.jspecify.annotations.NullMarked;
