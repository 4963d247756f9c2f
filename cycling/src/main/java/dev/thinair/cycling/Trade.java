package dev.thinair.cycling;

import dev.thinair.units.Si;
import dev.thinair.units.Units;

/** Units of the trade in SI, from the library's own definitions. */
final class Trade {

    /** W. */
    static final double TON = Si.watts(Units.tonsOfRefrigeration(1), "ton");

    /** m3/s. */
    static final double CUBIC_FOOT_PER_MINUTE =
            Si.cubicMetresPerSecond(Units.cubicFeetPerMinute(1), "cubic foot per minute");

    /** Pa. */
    static final double INCH_OF_WATER = Si.pascals(Units.inchesOfWater(1), "inch of water");

    /** Btu per watt-hour: what turns a ratio of heat to electricity into the trade's. */
    static final double BTU_PER_WATT_HOUR = 1 / Si.watts(Units.btuPerHour(1), "Btu per hour");

    private Trade() {}
}
