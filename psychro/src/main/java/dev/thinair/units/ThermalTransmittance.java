package dev.thinair.units;

import javax.measure.Quantity;

/**
 * Heat flow per area and temperature difference (the U-factor of a wall or window, or a surface
 * film coefficient), SI unit W/(m2 K).
 */
public interface ThermalTransmittance extends Quantity<ThermalTransmittance> {}
