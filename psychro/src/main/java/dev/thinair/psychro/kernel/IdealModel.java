package dev.thinair.psychro.kernel;

/** {@link IdealMoistAir} behind the common interface. */
final class IdealModel implements AirModel {

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
}
