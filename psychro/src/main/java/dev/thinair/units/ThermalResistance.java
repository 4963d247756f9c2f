package dev.thinair.units;

import javax.measure.Quantity;

/** Temperature difference per heat flux (the R-value of a layer or assembly), SI unit m2 K/W. */
public interface ThermalResistance extends Quantity<ThermalResistance> {}
