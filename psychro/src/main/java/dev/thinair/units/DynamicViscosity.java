package dev.thinair.units;

import javax.measure.Quantity;

/** Dynamic viscosity of a fluid, SI unit Pa s. */
public interface DynamicViscosity extends Quantity<DynamicViscosity> {}
