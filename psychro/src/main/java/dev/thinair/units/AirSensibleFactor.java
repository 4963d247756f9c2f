package dev.thinair.units;

import javax.measure.Quantity;

/**
 * Sensible heat per volume of air and temperature difference (the trade's 1.08), SI unit J/(m3 K).
 */
public interface AirSensibleFactor extends Quantity<AirSensibleFactor> {}
