package dev.thinair.units;

import javax.measure.Quantity;

/** Enthalpy per mass (for moist air: per mass of dry air), SI unit J/kg. */
public interface SpecificEnthalpy extends Quantity<SpecificEnthalpy> {}
