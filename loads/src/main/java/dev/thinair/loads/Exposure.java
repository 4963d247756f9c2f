package dev.thinair.loads;

import dev.thinair.loads.kernel.InfiltrationModel;
import dev.thinair.units.Range;
import java.util.Objects;

/**
 * What of a house drives air through its leaks: its height in stories, its shelter from wind, an
 * open flue, and whether it stands over a crawl space. Immutable.
 *
 * @param stories 1, 2 or 3
 * @param shelter local shielding, classes 1 to 5 of the handbook
 * @param flue true with an open flue (enhanced model only)
 * @param crawlSpace true over a crawl space, false on a slab or basement (enhanced model only)
 */
public record Exposure(
        int stories, InfiltrationModel.Shelter shelter, boolean flue, boolean crawlSpace) {

    /**
     * Checks the values.
     *
     * @param stories 1, 2 or 3
     * @param shelter local shielding, classes 1 to 5 of the handbook
     * @param flue true with an open flue (enhanced model only)
     * @param crawlSpace true over a crawl space, false on a slab or basement (enhanced model only)
     * @throws IllegalArgumentException if stories is outside [1, 3]
     */
    public Exposure {
        Range.require("stories", stories, 1, 3, "-");
        Objects.requireNonNull(shelter, "shelter");
    }

    /**
     * A house on a slab or basement without a flue.
     *
     * @param stories 1, 2 or 3
     * @param shelter local shielding
     * @return the exposure
     * @throws IllegalArgumentException if stories is outside [1, 3]
     */
    public static Exposure of(int stories, InfiltrationModel.Shelter shelter) {
        return new Exposure(stories, shelter, false, false);
    }

    /**
     * The same with an open flue.
     *
     * @return a new exposure
     */
    public Exposure withFlue() {
        return new Exposure(stories, shelter, true, crawlSpace);
    }

    /**
     * The same over a crawl space.
     *
     * @return a new exposure
     */
    public Exposure overCrawlSpace() {
        return new Exposure(stories, shelter, flue, true);
    }
}
