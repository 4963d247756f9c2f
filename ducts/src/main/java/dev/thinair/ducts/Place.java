package dev.thinair.ducts;

/** Where a duct runs, and so where its leaks lead and what air surrounds it. */
public enum Place {
    /** Inside the insulated envelope. */
    CONDITIONED_SPACE("conditioned space"),
    /** Attic above the insulation. */
    ATTIC("attic"),
    /** Crawl space under the floor. */
    CRAWL_SPACE("crawl space"),
    /** Unconditioned basement. */
    BASEMENT("basement"),
    /** Garage. */
    GARAGE("garage"),
    /** Outdoors, on a roof for instance. */
    OUTDOORS("outdoors");

    private final String words;

    Place(String words) {
        this.words = words;
    }

    /**
     * Whether air leaked here is lost to the house.
     *
     * @return false for the conditioned space
     */
    public boolean isOutside() {
        return this != CONDITIONED_SPACE;
    }

    @Override
    public String toString() {
        return words;
    }
}
