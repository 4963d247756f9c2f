package dev.thinair.units;

import javax.measure.Quantity;

/** Pressure drop per length of duct, SI unit Pa/m. */
public interface FrictionRate extends Quantity<FrictionRate> {}
