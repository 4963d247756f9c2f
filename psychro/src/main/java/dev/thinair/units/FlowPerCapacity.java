package dev.thinair.units;

import javax.measure.Quantity;

/**
 * Volume flow per cooling or heating capacity (the trade's airflow per ton), SI unit m3/s per W.
 */
public interface FlowPerCapacity extends Quantity<FlowPerCapacity> {}
