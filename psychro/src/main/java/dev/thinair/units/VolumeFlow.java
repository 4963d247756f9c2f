package dev.thinair.units;

import javax.measure.Quantity;

/**
 * Volume per time, SI unit m3/s. Whether it is actual or standard volume is said by the method that
 * takes or returns it.
 */
public interface VolumeFlow extends Quantity<VolumeFlow> {}
