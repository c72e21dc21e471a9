/**
 * The words of a language: one catalog, its messages in the ICU syntax. Begin at {@link bayfolio.catalog.Catalog}.
 */
@NullMarked
package bayfolio.catalog;

import org.jspecify.annotations.NullMarked;
