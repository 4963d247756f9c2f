package dev.thinair.units;

import javax.measure.Quantity;

/** Heat flow or radiation per area, SI unit W/m2. */
public interface HeatFlux extends Quantity<HeatFlux> {}
