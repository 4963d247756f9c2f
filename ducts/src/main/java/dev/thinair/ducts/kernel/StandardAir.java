package dev.thinair.ducts.kernel;

import dev.thinair.altitude.kernel.AirDensity;

/** The air that rating tables are written for. */
public final class StandardAir {

    /**
     * Density of standard air, kg/m3: 0.075 lb/ft3. A standard volume flow anywhere in this library
     * is the mass flow over this density. Source: ASHRAE Handbook - Fundamentals, chapter Duct
     * Design.
     */
    public static final double DENSITY = AirDensity.STANDARD_INCH_POUND;

    /**
     * Dynamic viscosity of dry air at 21 C, Pa s. It hardly changes with elevation; kinematic
     * viscosity rises as density falls. Reference value 1.82e-5 (from memory).
     */
    public static final double VISCOSITY = 1.82e-5;

    private StandardAir() {}
}
