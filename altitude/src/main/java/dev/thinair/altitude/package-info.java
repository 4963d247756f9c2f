/**
 * What thin air does, each question with its own answer.
 *
 * <p>{@link dev.thinair.altitude.SitePressure} is where everything starts: a station reading, an
 * altimeter setting, or the standard atmosphere at an elevation. {@link
 * dev.thinair.altitude.DensityRatio} names which of the two ratios in use is meant. {@link
 * dev.thinair.altitude.AirHeatFactors} derives the trade's 1.08, 4840 and 4.5 at any density.
 * {@link dev.thinair.altitude.Derating} answers for ducts, blower, coil, condenser and burner in
 * volume, in mass and in heat, because the trade mixes them up; {@link
 * dev.thinair.altitude.AirflowPerTon} and {@link dev.thinair.altitude.BlowerAtSite} carry catalogue
 * figures to the site. Each shows its work.
 *
 * <p>Which statement about ducts at elevation is true (air at the same temperature, losses
 * proportional to density times velocity squared):
 *
 * <table>
 * <caption>Change against sea level</caption>
 * <tr><th>question</th><th>6000 ft</th><th>7000 ft</th><th>8000 ft</th></tr>
 * <tr><td>same blower and speed: volume</td><td>0</td><td>0</td><td>0</td></tr>
 * <tr><td>same blower and speed: mass and heat</td><td>-19.9 %</td><td>-22.8 %</td><td>-25.7
 * %</td></tr>
 * <tr><td>same pressure drop: volume</td><td>+11.7 %</td><td>+13.8 %</td><td>+16.0 %</td></tr>
 * <tr><td>same pressure drop: mass and heat</td><td>-10.5 %</td><td>-12.2 %</td><td>-13.8
 * %</td></tr>
 * <tr><td>volume for the same heat</td><td>+24.8 %</td><td>+29.6 %</td><td>+34.6 %</td></tr>
 * </table>
 *
 * <p><b>Safety.</b> Combustion appliances at elevation are rated by their maker's instructions and
 * the local code, and set by licensed gas technicians with a combustion analyser: a burner with too
 * little air makes carbon monoxide, which kills. Numbers from this package replace neither.
 */
package dev.thinair.altitude;
