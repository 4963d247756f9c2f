package dev.thinair.units;

import javax.measure.Quantity;

/** Heat per temperature difference of a whole body, SI unit J/K. */
public interface HeatCapacity extends Quantity<HeatCapacity> {}
