package dev.thinair.psychro.kernel;

/** {@link RealMoistAir} behind the common interface. */
final class RealModel implements AirModel {

    @Override
    public double saturationHumidityRatio(double temperature, double pressure) {
        return RealMoistAir.saturationHumidityRatio(temperature, pressure);
    }

    @Override
    public double humidityRatioFromRelativeHumidity(
            double dryBulb, double relativeHumidity, double pressure) {
        return RealMoistAir.humidityRatioFromRelativeHumidity(dryBulb, relativeHumidity, pressure);
    }

    @Override
    public double humidityRatioFromWetBulb(double dryBulb, double wetBulb, double pressure) {
        return RealMoistAir.humidityRatioFromWetBulb(dryBulb, wetBulb, pressure);
    }

    @Override
    public double humidityRatioFromDewPoint(double dewPoint, double pressure) {
        return RealMoistAir.humidityRatioFromDewPoint(dewPoint, pressure);
    }

    @Override
    public double humidityRatioFromEnthalpy(double dryBulb, double enthalpy, double pressure) {
        return RealMoistAir.humidityRatioFromEnthalpy(dryBulb, enthalpy, pressure);
    }

    @Override
    public double enthalpy(double dryBulb, double humidityRatio, double pressure) {
        return RealMoistAir.enthalpy(dryBulb, humidityRatio, pressure);
    }

    @Override
    public double dryBulbFromEnthalpy(double enthalpy, double humidityRatio, double pressure) {
        return RealMoistAir.dryBulbFromEnthalpy(enthalpy, humidityRatio, pressure);
    }

    @Override
    public double specificVolume(double dryBulb, double humidityRatio, double pressure) {
        return RealMoistAir.specificVolume(dryBulb, humidityRatio, pressure);
    }

    @Override
    public double relativeHumidity(double dryBulb, double humidityRatio, double pressure) {
        return RealMoistAir.relativeHumidity(dryBulb, humidityRatio, pressure);
    }

    @Override
    public double dewPoint(double humidityRatio, double pressure) {
        return RealMoistAir.dewPoint(humidityRatio, pressure);
    }

    @Override
    public double wetBulb(double dryBulb, double humidityRatio, double pressure) {
        return RealMoistAir.wetBulb(dryBulb, humidityRatio, pressure);
    }

    @Override
    public double liquidEnthalpy(double temperature) {
        return RealMoistAir.liquidEnthalpy(temperature);
    }

    @Override
    public double iceEnthalpy(double temperature) {
        return RealMoistAir.iceEnthalpy(temperature);
    }

    @Override
    public boolean hasDewPoint(double humidityRatio, double pressure) {
        return IdealMoistAir.vaporPressure(humidityRatio, pressure)
                >= RealMoistAir.lowestVaporPressure(pressure);
    }
}
