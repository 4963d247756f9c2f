package dev.thinair.units;

import javax.measure.Quantity;

/**
 * Mass of water vapour per mass of dry air, SI unit kg/kg. Its own type, so that a relative
 * humidity cannot be handed in by mistake.
 */
public interface HumidityRatio extends Quantity<HumidityRatio> {}
