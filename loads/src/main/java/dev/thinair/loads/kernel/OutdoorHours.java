package dev.thinair.loads.kernel;

import dev.thinair.units.Range;

/**
 * What the weather and the sun do to a house, at consecutive hour marks, in primitive SI values.
 *
 * <p>A periodic series has 24 marks, index h being h:00 local standard time, and repeats; a long
 * one (a year) has any whole number of hours. Values hold at the mark and are understood as linear
 * between marks. The sun is kept as a direction, so that the irradiance of any plane costs a few
 * multiplications an hour.
 *
 * <p>Immutable: any thread may share it; arrays are copied on the way in and never given out.
 */
public final class OutdoorHours {

    private final double[] dryBulb;
    private final double[] humidityRatio;
    private final double[] windSpeed;
    private final double[] sunAltitude;
    private final double[] sunAzimuth;
    private final double[] beamNormal;
    private final double[] diffuseHorizontal;
    private final double[] sunEast;
    private final double[] sunNorth;
    private final double[] sunUp;
    private final double pressure;
    private final double groundTemperature;
    private final double groundReflectance;
    private final int firstHour;
    private final boolean periodic;
    private final double meanDryBulb;

    /**
     * Joins the series. All arrays have one length; it is 24 for a periodic series.
     *
     * @param periodic true if the 24 hours repeat
     * @param firstHour hour of day of index 0, in [0, 23]; 0 if periodic
     * @param dryBulb K, in [180, 340]
     * @param humidityRatio kg/kg, in [0, 0.5]
     * @param windSpeed m/s, in [0, 120]
     * @param sunAltitude rad, in [-pi/2, pi/2]
     * @param sunAzimuth rad from north
     * @param beamNormal W/m2, in [0, 1500]
     * @param diffuseHorizontal W/m2, in [0, 1500]
     * @param pressure station pressure, Pa, in [30000, 110000]
     * @param groundTemperature undisturbed ground, K, in [230, 320]; NaN means unknown, and then
     *     {@link #groundTemperature} refuses to answer
     * @param groundReflectance in [0, 1]
     * @throws IllegalArgumentException if a value is NaN or outside its range, or lengths differ
     */
    public OutdoorHours(
            boolean periodic,
            int firstHour,
            double[] dryBulb,
            double[] humidityRatio,
            double[] windSpeed,
            double[] sunAltitude,
            double[] sunAzimuth,
            double[] beamNormal,
            double[] diffuseHorizontal,
            double pressure,
            double groundTemperature,
            double groundReflectance) {
        int n = dryBulb.length;
        if (n == 0 || (periodic && n != 24)) {
            throw new IllegalArgumentException(
                    "number of hours is "
                            + n
                            + ", but must be "
                            + (periodic ? "24 for a repeating day" : "at least 1"));
        }
        Range.require("first hour", firstHour, 0, periodic ? 0 : 23, "h");
        Range.require("pressure", pressure, 30_000, 110_000, "Pa");
        if (!Double.isNaN(groundTemperature)) {
            Range.require("ground temperature", groundTemperature, 230, 320, "K");
        }
        Range.require("ground reflectance", groundReflectance, 0, 1, "-");
        this.periodic = periodic;
        this.firstHour = firstHour;
        this.dryBulb = checked("dry bulb", dryBulb, n, 180, 340, "K");
        this.humidityRatio = checked("humidity ratio", humidityRatio, n, 0, 0.5, "kg/kg");
        this.windSpeed = checked("wind speed", windSpeed, n, 0, 120, "m/s");
        this.sunAltitude =
                checked("solar altitude", sunAltitude, n, -Math.PI / 2, Math.PI / 2, "rad");
        this.sunAzimuth = checked("sun azimuth", sunAzimuth, n, -100, 100, "rad");
        this.beamNormal = checked("beam normal irradiance", beamNormal, n, 0, 1_500, "W/m2");
        this.diffuseHorizontal =
                checked("diffuse horizontal irradiance", diffuseHorizontal, n, 0, 1_500, "W/m2");
        this.pressure = pressure;
        this.groundTemperature = groundTemperature;
        this.groundReflectance = groundReflectance;
        sunEast = new double[n];
        sunNorth = new double[n];
        sunUp = new double[n];
        double sum = 0;
        for (int h = 0; h < n; h++) {
            double level = Math.cos(sunAltitude[h]);
            sunEast[h] = level * Math.sin(sunAzimuth[h]);
            sunNorth[h] = level * Math.cos(sunAzimuth[h]);
            sunUp[h] = Math.sin(sunAltitude[h]);
            sum += dryBulb[h];
        }
        meanDryBulb = sum / n;
    }

    private static double[] checked(
            String name, double[] values, int n, double low, double high, String unit) {
        if (values.length != n) {
            throw new IllegalArgumentException(
                    "number of values of " + name + " is " + values.length + ", but must be " + n);
        }
        for (int h = 0; h < n; h++) {
            if (!(values[h] >= low && values[h] <= high)) {
                Range.require(name + " at hour index " + h, values[h], low, high, unit);
            }
        }
        return values.clone();
    }

    /**
     * Number of hour marks.
     *
     * @return 24 for a repeating day, any number of hours otherwise
     */
    public int count() {
        return dryBulb.length;
    }

    /**
     * Whether the series is one day that repeats.
     *
     * @return true for a design day
     */
    public boolean periodic() {
        return periodic;
    }

    /**
     * Clock hour of an index, local standard time.
     *
     * @param index hour index, from 0
     * @return hour of day, 0 to 23
     */
    public int hourOfDay(int index) {
        return (firstHour + index) % 24;
    }

    /**
     * Outdoor dry bulb.
     *
     * @param h hour index
     * @return K
     */
    public double dryBulb(int h) {
        return dryBulb[h];
    }

    /**
     * Mean outdoor dry bulb of the whole series.
     *
     * @return K
     */
    public double meanDryBulb() {
        return meanDryBulb;
    }

    /**
     * Outdoor humidity ratio.
     *
     * @param h hour index
     * @return kg water per kg dry air
     */
    public double humidityRatio(int h) {
        return humidityRatio[h];
    }

    /**
     * Wind speed at the meteorological station.
     *
     * @param h hour index
     * @return m/s
     */
    public double windSpeed(int h) {
        return windSpeed[h];
    }

    /**
     * Station pressure.
     *
     * @return Pa
     */
    public double pressure() {
        return pressure;
    }

    /**
     * Undisturbed ground temperature.
     *
     * @return K
     * @throws IllegalStateException if it was not given
     */
    public double groundTemperature() {
        if (Double.isNaN(groundTemperature)) {
            throw new IllegalStateException(
                    "ground temperature of the site is not given, but a house in contact with the"
                            + " ground needs it");
        }
        return groundTemperature;
    }

    /**
     * Reflectance of the ground round the house.
     *
     * @return share of the irradiance on it, 0 to 1
     */
    public double groundReflectance() {
        return groundReflectance;
    }

    /**
     * Altitude of the sun.
     *
     * @param h hour index
     * @return rad, negative below the horizon
     */
    public double sunAltitude(int h) {
        return sunAltitude[h];
    }

    /**
     * Azimuth of the sun.
     *
     * @param h hour index
     * @return rad, from north, clockwise
     */
    public double sunAzimuth(int h) {
        return sunAzimuth[h];
    }

    /**
     * Beam irradiance on a plane facing the sun.
     *
     * @param h hour index
     * @return W/m2
     */
    public double beamNormal(int h) {
        return beamNormal[h];
    }

    /**
     * Sky diffuse irradiance on the horizontal.
     *
     * @param h hour index
     * @return W/m2
     */
    public double diffuseHorizontal(int h) {
        return diffuseHorizontal[h];
    }

    /**
     * Cosine of incidence of the sun on a plane given by its outward normal.
     *
     * @param h hour index
     * @param east east part of the unit normal
     * @param north north part
     * @param up upward part
     * @return cosine, in [-1, 1] but for rounding
     */
    public double cosIncidence(int h, double east, double north, double up) {
        return sunEast[h] * east + sunNorth[h] * north + sunUp[h] * up;
    }

    /**
     * Diffuse irradiance on a plane at an hour mark, sky and ground together: {@link
     * Transposition#skyDiffuse} and {@link Transposition#groundReflected} with the sines at hand.
     *
     * @param h hour index
     * @param onVertical cosine of incidence on the vertical plane of the same azimuth
     * @param sinTilt sine of the plane's tilt
     * @param cosTilt cosine of the plane's tilt
     * @return W/m2
     */
    public double diffuseOnPlane(int h, double onVertical, double sinTilt, double cosTilt) {
        double diffuse = diffuseHorizontal[h];
        double level = sunUp[h] > 0 ? beamNormal[h] * sunUp[h] : 0;
        return diffuse * (Transposition.ratioY(onVertical) * sinTilt + Math.max(0, cosTilt))
                + (level + diffuse) * groundReflectance * (1 - cosTilt) / 2;
    }

    /**
     * Total irradiance on an unshaded plane at every hour mark: beam, sky diffuse by the handbook's
     * ratio Y, and ground reflection.
     *
     * @param azimuth azimuth of the plane's outward normal, rad from north
     * @param tilt tilt from the horizontal, rad, in [0, pi]
     * @param out receives {@link #count} values, W/m2
     * @throws IllegalArgumentException if tilt or azimuth is NaN or out of range, or out is short
     */
    public void incident(double azimuth, double tilt, double[] out) {
        Transposition.requirePlane(tilt, azimuth);
        requireRoom(out);
        double sinTilt = Math.sin(tilt);
        double cosTilt = Math.cos(tilt);
        double east = Math.sin(azimuth);
        double north = Math.cos(azimuth);
        for (int h = 0; h < dryBulb.length; h++) {
            double beam = beamNormal[h];
            if (beam == 0 && diffuseHorizontal[h] == 0) {
                out[h] = 0;
                continue;
            }
            double onVertical = sunEast[h] * east + sunNorth[h] * north;
            double onPlane = onVertical * sinTilt + sunUp[h] * cosTilt;
            out[h] =
                    (onPlane > 0 && sunUp[h] > 0 ? beam * onPlane : 0)
                            + diffuseOnPlane(h, onVertical, sinTilt, cosTilt);
        }
    }

    /**
     * The parts of the irradiance on an unshaded plane at every hour mark.
     *
     * @param azimuth azimuth of the plane's outward normal, rad from north
     * @param tilt tilt from the horizontal, rad, in [0, pi]
     * @param beamOut receives beam, W/m2
     * @param skyOut receives sky diffuse, W/m2
     * @param groundOut receives ground reflection, W/m2
     * @param cosIncidenceOut receives the cosine of incidence, negative when the sun is behind
     * @throws IllegalArgumentException if tilt or azimuth is NaN or out of range, or an array is
     *     short
     */
    public void incidentParts(
            double azimuth,
            double tilt,
            double[] beamOut,
            double[] skyOut,
            double[] groundOut,
            double[] cosIncidenceOut) {
        Transposition.requirePlane(tilt, azimuth);
        requireRoom(beamOut);
        requireRoom(skyOut);
        requireRoom(groundOut);
        requireRoom(cosIncidenceOut);
        double sinTilt = Math.sin(tilt);
        double cosTilt = Math.cos(tilt);
        double east = Math.sin(azimuth);
        double north = Math.cos(azimuth);
        for (int h = 0; h < dryBulb.length; h++) {
            double onVertical = sunEast[h] * east + sunNorth[h] * north;
            double onPlane = onVertical * sinTilt + sunUp[h] * cosTilt;
            cosIncidenceOut[h] = Math.max(-1, Math.min(1, onPlane));
            beamOut[h] = sunUp[h] > 0 ? Transposition.beam(beamNormal[h], onPlane) : 0;
            skyOut[h] =
                    Transposition.skyDiffuse(
                            diffuseHorizontal[h], Transposition.ratioY(onVertical), tilt);
            groundOut[h] =
                    Transposition.groundReflected(
                            beamNormal[h],
                            sunAltitude[h],
                            diffuseHorizontal[h],
                            groundReflectance,
                            tilt);
        }
    }

    private void requireRoom(double[] out) {
        if (out.length < dryBulb.length) {
            throw new IllegalArgumentException(
                    "result array has "
                            + out.length
                            + " places, but the series has "
                            + dryBulb.length
                            + " hours");
        }
    }
}
