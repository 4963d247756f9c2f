package dev.thinair.units;

import javax.measure.Quantity;

/** Mass per time, SI unit kg/s. */
public interface MassFlow extends Quantity<MassFlow> {}
