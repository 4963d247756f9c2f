package dev.thinair.psychro.kernel;

/** {@link IdealMoistAir} behind the common interface. */
final class IdealModel implements AirModel {

    /** Saturation pressure, Pa, at 173.15 K and each kelvin above: the least up to the next. */
    private static final double[] LEAST_SATURATION = new double[301];

    static {
        for (int i = 0; i < LEAST_SATURATION.length; i++) {
            // A rounding lower: on a short slope near a mark the formula may round upwards.
            LEAST_SATURATION[i] = Saturation.pressure(Domain.LOWEST_TEMPERATURE + i) * (1 - 1e-12);
        }
    }

    @Override
    public double saturationHumidityRatio(double temperature, double pressure) {
        return IdealMoistAir.saturationHumidityRatio(temperature, pressure);
    }

    @Override
    public double humidityRatioFromRelativeHumidity(
            double dryBulb, double relativeHumidity, double pressure) {
        return IdealMoistAir.humidityRatioFromRelativeHumidity(dryBulb, relativeHumidity, pressure);
    }

    @Override
    public double humidityRatioFromWetBulb(double dryBulb, double wetBulb, double pressure) {
        return IdealMoistAir.humidityRatioFromWetBulb(dryBulb, wetBulb, pressure);
    }

    @Override
    public double humidityRatioFromDewPoint(double dewPoint, double pressure) {
        return IdealMoistAir.humidityRatioFromDewPoint(dewPoint, pressure);
    }

    @Override
    public double humidityRatioFromEnthalpy(double dryBulb, double enthalpy, double pressure) {
        Domain.pressure(pressure);
        return IdealMoistAir.humidityRatioFromEnthalpy(dryBulb, enthalpy);
    }

    @Override
    public double enthalpy(double dryBulb, double humidityRatio, double pressure) {
        Domain.pressure(pressure);
        return IdealMoistAir.enthalpy(dryBulb, humidityRatio);
    }

    @Override
    public double dryBulbFromEnthalpy(double enthalpy, double humidityRatio, double pressure) {
        Domain.pressure(pressure);
        return IdealMoistAir.dryBulbFromEnthalpy(enthalpy, humidityRatio);
    }

    @Override
    public double specificVolume(double dryBulb, double humidityRatio, double pressure) {
        return IdealMoistAir.specificVolume(dryBulb, humidityRatio, pressure);
    }

    @Override
    public double relativeHumidity(double dryBulb, double humidityRatio, double pressure) {
        return IdealMoistAir.relativeHumidity(dryBulb, humidityRatio, pressure);
    }

    @Override
    public double dewPoint(double humidityRatio, double pressure) {
        return IdealMoistAir.dewPoint(humidityRatio, pressure);
    }

    @Override
    public double wetBulb(double dryBulb, double humidityRatio, double pressure) {
        return IdealMoistAir.wetBulb(dryBulb, humidityRatio, pressure);
    }

    @Override
    public double liquidEnthalpy(double temperature) {
        return IdealMoistAir.liquidEnthalpy(temperature);
    }

    @Override
    public double iceEnthalpy(double temperature) {
        return IdealMoistAir.iceEnthalpy(temperature);
    }

    @Override
    public boolean hasDewPoint(double humidityRatio, double pressure) {
        return IdealMoistAir.vaporPressure(humidityRatio, pressure) >= Saturation.LOWEST_PRESSURE;
    }

    /**
     * As the interface has it, but most air is seen to be unsaturated without an exponential: its
     * vapor pressure is below saturation already at the whole kelvin under its dry bulb.
     */
    @Override
    public void requireUnsaturated(double dryBulb, double humidityRatio, double pressure) {
        Domain.dryBulb(dryBulb);
        double vapor = IdealMoistAir.vaporPressure(humidityRatio, pressure);
        if (vapor > LEAST_SATURATION[(int) (dryBulb - Domain.LOWEST_TEMPERATURE)]) {
            AirModel.super.requireUnsaturated(dryBulb, humidityRatio, pressure);
        }
    }
}
