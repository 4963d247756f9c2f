/**
 * Moist air as state, and processes on air streams, with units.
 *
 * <p>{@link dev.thinair.psychro.MoistAir} is one state, made from any usual pair of readings;
 * {@link dev.thinair.psychro.AirStream} is air that flows, with mixing, heating, cooling coils and
 * humidifying; {@link dev.thinair.psychro.WaterVapor} is the saturation curve alone. Results that
 * need not exist (a coil state, a clear mixture) are sealed types, so the caller sees each case.
 * {@link dev.thinair.psychro.Formulation} chooses between the handbook's ideal mixture and the real
 * one; <a href="{@docRoot}/dev/thinair/psychro/doc-files/ideal-and-real.html">their difference</a>
 * is tabulated. Every principal result offers its working.
 *
 * <p>The formulas live in {@link dev.thinair.psychro.kernel}, on SI doubles.
 */
package dev.thinair.psychro;
