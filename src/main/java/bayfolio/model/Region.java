package bayfolio.model;

import bayfolio.measure.MeasureSystem;

/** Where a coach is built for: decides supplies, words and which measures come first. */
public enum Region {
    NORTH_AMERICA(MeasureSystem.US),
    EUROPE(MeasureSystem.METRIC),
    /** Australia and New Zealand. */
    OCEANIA(MeasureSystem.METRIC);

    private final MeasureSystem first;

    Region(MeasureSystem first) {
        this.first = first;
    }

    /** The measures that its people think in; the others stand in brackets. */
    public MeasureSystem first() {
        return first;
    }
}
