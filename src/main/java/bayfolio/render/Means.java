package bayfolio.render;

import bayfolio.catalog.Catalogs;
import bayfolio.model.Fleet;
import bayfolio.render.theme.Theme;

/** What handbooks are given out with, in whatever way: how they look, what they say, whose they are, how they are printed. */
public record Means(Theme theme, Catalogs catalogs, Fleet fleet, Printing printing) {}
