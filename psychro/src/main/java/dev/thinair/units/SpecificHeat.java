package dev.thinair.units;

import javax.measure.Quantity;

/** Heat per mass and temperature difference, SI unit J/(kg K). */
public interface SpecificHeat extends Quantity<SpecificHeat> {}
