package dev.thinair.examples.job;

import dev.thinair.cycling.CoolingUnit;
import dev.thinair.cycling.FanMode;
import dev.thinair.cycling.Staging;
import dev.thinair.cycling.Tariff;
import dev.thinair.cycling.Thermostat;
import dev.thinair.cycling.UnitFaults;
import dev.thinair.units.TemperatureDifference;
import dev.thinair.units.VolumeFlow;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;

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
                    return CoolingUnit.builder()
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
                            .faults(faults)
                            .build();
                });
    }

    Thermostat thermostat() throws JobFileException {
        Part p = job.part("thermostat");
        return Model.at(
                p,
                () ->
                        Thermostat.at(p.amount("setpoint", Temperature.class))
                                .withDifferential(
                                        p.amount("differential", TemperatureDifference.class))
                                .withFanMode(
                                        p.text("fan", "auto").equals("on")
                                                ? FanMode.CONTINUOUS
                                                : FanMode.AUTOMATIC));
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
                    Tariff flat = Tariff.flat(energy.currency(), energy.amount());
                    return p.has("fixed") ? flat.withFixedCharge(p.price("fixed").amount()) : flat;
                });
    }
}
