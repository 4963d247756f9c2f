package dev.thinair.units;

import javax.measure.Quantity;

/** Heat flow per temperature difference of a whole part (UA), SI unit W/K. */
public interface ThermalConductance extends Quantity<ThermalConductance> {}
