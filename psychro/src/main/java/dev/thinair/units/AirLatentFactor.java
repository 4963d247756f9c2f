package dev.thinair.units;

import javax.measure.Quantity;

/**
 * Latent heat per volume of air and difference of humidity ratio (the trade's 4840), SI unit J/m3.
 */
public interface AirLatentFactor extends Quantity<AirLatentFactor> {}
