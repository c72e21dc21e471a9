package bayfolio.explain;

import bayfolio.reckon.Origin;

/**
 * A figure that a question begins with.
 *
 * @param name what it is: {@code capacity of the fresh tank}
 * @param value with its unit, as it is shown: {@code 60 gal (227 L)}
 * @param origin where it came from
 */
public record Input(String name, String value, Origin origin) {}
