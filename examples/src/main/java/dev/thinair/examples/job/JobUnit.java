package dev.thinair.examples.job;

import dev.thinair.altitude.SitePressure;
import dev.thinair.cycling.CoolingUnit;
import dev.thinair.cycling.FanMode;
import dev.thinair.cycling.HeatPump;
import dev.thinair.cycling.PerformancePoint;
import dev.thinair.cycling.Staging;
import dev.thinair.cycling.Tariff;
import dev.thinair.cycling.Thermostat;
import dev.thinair.cycling.UnitFaults;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.TemperatureDifference;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import java.util.Optional;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/** Builds unit and thermostat from a checked job file. */
final class JobUnit {
    private final Part job;

    JobUnit(Part job) {
        this.job = job;
    }

    CoolingUnit unit() throws JobFileException {
        Part p = job.part("unit");
        return Model.at(
                p,
                () -> {
                    UnitFaults faults = UnitFaults.none();
                    if (p.has("refrigerant-charge")) {
                        faults = UnitFaults.charge(p.ratio("refrigerant-charge"));
                    }
                    faults =
                            new UnitFaults(
                                            p.has("condenser-heat-transfer")
                                                    ? p.ratio("condenser-heat-transfer")
                                                    : 1,
                                            p.has("condenser-airflow")
                                                    ? p.ratio("condenser-airflow")
                                                    : 1,
                                            1,
                                            1)
                                    .and(faults);
                    CoolingUnit.Builder unit =
                            CoolingUnit.builder()
                                    .name(p.text("name"))
                                    .ratedCapacity(p.amount("rated-capacity", Power.class))
                                    .sensibleHeatRatio(p.ratio("sensible-heat-ratio"))
                                    .ratedPower(p.amount("rated-power", Power.class))
                                    .ratedAirflow(p.amount("rated-airflow", VolumeFlow.class))
                                    .staging(
                                            switch (p.text("staging")) {
                                                case "two-stage" -> Staging.TWO_STAGE;
                                                case "variable" -> Staging.VARIABLE;
                                                default -> Staging.SINGLE;
                                            })
                                    .faults(faults);
                    if (p.has("performance-points")) {
                        unit.performancePoints(
                                p.parts("performance-points").stream()
                                        .map(JobUnit::performance)
                                        .toList());
                    }
                    if (p.has("off-cycle-power")) {
                        unit.offCyclePower(p.amount("off-cycle-power", Power.class));
                    }
                    if (p.has("start-up-time")) {
                        unit.startUpTimeConstant(p.amount("start-up-time", Time.class));
                    }
                    if (p.has("coil-holds") || p.has("evaporation-ratio")) {
                        unit.coilMoisture(
                                p.amount("coil-holds", Time.class, Units.seconds(720)),
                                p.has("evaporation-ratio") ? p.ratio("evaporation-ratio") : 0.33);
                    }
                    return unit.build();
                });
    }

    private static PerformancePoint performance(Part p) {
        return new PerformancePoint(
                MoistAir.ofDryBulbAndWetBulb(
                        p.amount("entering-dry-bulb", Temperature.class),
                        p.amount("entering-wet-bulb", Temperature.class),
                        SitePressure.standardAt(Units.metres(0)).pressure()),
                p.amount("airflow", VolumeFlow.class),
                p.amount("outdoor-dry-bulb", Temperature.class),
                p.amount("total-capacity", Power.class),
                p.amount("sensible-capacity", Power.class),
                p.amount("power", Power.class),
                p.amount("indoor-fan-power", Power.class, Units.watts(0)));
    }

    Optional<HeatPump> heatPump() throws JobFileException {
        if (!job.has("heat-pump")) {
            return Optional.empty();
        }
        Part p = job.part("heat-pump");
        return Optional.of(
                Model.at(
                        p,
                        () ->
                                HeatPump.of(
                                        job.part("unit").text("name"),
                                        p.amount("capacity-at-47-degF", Power.class),
                                        p.amount("power-at-47-degF", Power.class),
                                        p.amount("capacity-at-17-degF", Power.class),
                                        p.amount("power-at-17-degF", Power.class))));
    }

    Thermostat thermostat() throws JobFileException {
        Part p = job.part("thermostat");
        return Model.at(
                p,
                () -> {
                    Thermostat t =
                            Thermostat.at(p.amount("setpoint", Temperature.class))
                                    .withDifferential(
                                            p.amount("differential", TemperatureDifference.class))
                                    .withFanMode(
                                            p.text("fan", "auto").equals("on")
                                                    ? FanMode.CONTINUOUS
                                                    : FanMode.AUTOMATIC);
                    if (p.has("second-stage-differential")) {
                        t =
                                t.withSecondStageDifferential(
                                        p.amount(
                                                "second-stage-differential",
                                                TemperatureDifference.class));
                    }
                    if (p.has("second-stage-delay")) {
                        t = t.withSecondStageDelay(p.amount("second-stage-delay", Time.class));
                    }
                    if (p.has("minimum-off-time")) {
                        t = t.withMinimumOffTime(p.amount("minimum-off-time", Time.class));
                    }
                    return t;
                });
    }

    Tariff tariff() throws JobFileException {
        Part p = job.part("tariff");
        Shape.Price.Money energy = p.price("energy");
        if (p.has("fixed") && !p.price("fixed").currency().equals(energy.currency())) {
            throw p.fault(
                    "fixed",
                    "is in another currency than the energy price",
                    "give both in " + energy.currency());
        }
        return Model.at(
                p,
                () -> {
                    Tariff t =
                            p.has("peak-energy")
                                    ? Tariff.timeOfUse(
                                            energy.currency(),
                                            p.price("peak-energy").amount(),
                                            energy.amount(),
                                            p.count("peak-from"),
                                            p.count("peak-to"),
                                            p.text("peak-days", "all").equals("weekdays"))
                                    : Tariff.flat(energy.currency(), energy.amount());
                    if (p.has("demand")) {
                        t = t.withDemandPrice(p.price("demand").amount());
                    }
                    return p.has("fixed") ? t.withFixedCharge(p.price("fixed").amount()) : t;
                });
    }
}
