package dev.thinair.units;

import javax.measure.Quantity;

/** Mass per volume, SI unit kg/m3. */
public interface Density extends Quantity<Density> {}
