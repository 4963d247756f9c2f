package dev.thinair.units;

import javax.measure.Quantity;

/**
 * A difference between two temperatures, SI unit K. Not a temperature: 18 Fahrenheit degrees of
 * difference are 10 K, while a temperature of 18 &deg;F is 265.4 K.
 */
public interface TemperatureDifference extends Quantity<TemperatureDifference> {}
