package dev.thinair.units;

import javax.measure.Quantity;

/** Heat flux per temperature gradient in a material, SI unit W/(m K). */
public interface ThermalConductivity extends Quantity<ThermalConductivity> {}
