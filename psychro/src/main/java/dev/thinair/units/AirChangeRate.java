package dev.thinair.units;

import javax.measure.Quantity;

/** Changes of a room's air per time, SI unit 1/s. */
public interface AirChangeRate extends Quantity<AirChangeRate> {}
