/**
 * Declared facts: each kind of record says once which keys it has, of what type, what they mean and
 * whether they must be there. Reader, JSON Schema, reference page, tables of facts and fillings all
 * follow that one declaration. Begin at {@link Shape}.
 */
@NullMarked
package bayfolio.fact;

import org.jspecify.annotations.NullMarked;
