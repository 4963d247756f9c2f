/**
 * Duct systems and the air they really carry.
 *
 * <p>Describe a {@link dev.thinair.ducts.DuctSystem} (blower, filter, coil, trunks, runs, returns,
 * leaks), solve it for air in any state, and read the {@link dev.thinair.ducts.Airflow}. Then ask:
 * how much cooling can these ducts carry ({@link dev.thinair.ducts.Capacity}), what would a shut
 * register or a dirty filter give back ({@link dev.thinair.ducts.Effects}), what does elevation
 * change ({@link dev.thinair.ducts.ElevationComparison}), what is the least work that mends it
 * ({@link dev.thinair.ducts.Retrofit}), how large should new ducts be ({@link
 * dev.thinair.ducts.Sizing}), and what arrives of the cold ({@link dev.thinair.ducts.DuctHeat}).
 *
 * <p>Flows are actual (at the air's own density), standard (mass over 0.075 lb/ft3) or mass, and
 * every method says which.
 *
 * <p>Cutting into ducts, moving registers and changing a blower's speed can upset combustion
 * appliances and their vents: follow local code and the maker's instructions, and have a licensed
 * practitioner check draft and carbon monoxide afterwards.
 */
package dev.thinair.ducts;
