package dev.thinair.units;

import javax.measure.Quantity;

/** Volume per mass (for moist air: per mass of dry air), SI unit m3/kg. */
public interface SpecificVolume extends Quantity<SpecificVolume> {}
