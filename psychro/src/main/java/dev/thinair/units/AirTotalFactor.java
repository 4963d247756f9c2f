package dev.thinair.units;

import javax.measure.Quantity;

/**
 * Heat per volume of air and difference of specific enthalpy (the trade's 4.5), SI unit W per L/s
 * and kJ/kg, which is kg/m3.
 */
public interface AirTotalFactor extends Quantity<AirTotalFactor> {}
