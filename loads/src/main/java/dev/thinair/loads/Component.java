package dev.thinair.loads;

/** Where a part of a room's load comes from. The parts of a room add up to its load. */
public enum Component {
    /** Conduction through opaque walls that face outdoors. */
    WALLS("walls"),
    /** Conduction through roofs that are a room's own ceiling. */
    ROOFS("roofs"),
    /**
     * Conduction through floors, slabs and below-grade walls, and to spaces of steady temperature.
     */
    FLOORS("floors and ground"),
    /** Conduction through doors. */
    DOORS("doors"),
    /** Conduction through windows. */
    WINDOW_CONDUCTION("windows, conduction"),
    /** Sun through windows. */
    WINDOW_SUN("windows, sun"),
    /** Heat from people. */
    PEOPLE("people"),
    /** Heat from appliances. */
    APPLIANCES("appliances"),
    /** Heat from lights. */
    LIGHTS("lights"),
    /** Outdoor air that leaks in. */
    INFILTRATION("infiltration"),
    /** Outdoor air brought in by fans. */
    VENTILATION("ventilation"),
    /** Heat by way of unconditioned spaces: attic, crawlspace, garage. */
    UNCONDITIONED_SPACES("attic and other spaces"),
    /**
     * Heat from other rooms: their sun and outer walls by way of partitions, and their temperature.
     */
    OTHER_ROOMS("other rooms"),
    /** Heat taken from or given to the building's mass because the setpoint changes by hour. */
    SETPOINT_CHANGE("setpoint change"),
    /** Heat that the ducts gain or lose outside the conditioned rooms, as told to the house. */
    DUCTS("ducts");

    private final String label;

    Component(String label) {
        this.label = label;
    }

    /**
     * The component's name as tables print it.
     *
     * @return label
     */
    public String label() {
        return label;
    }
}
