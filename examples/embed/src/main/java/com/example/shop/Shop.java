package com.example.shop;

import static dev.thinair.units.Units.celsius;
import static dev.thinair.units.Units.cubicFeetPerMinute;
import static dev.thinair.units.Units.cubicFeetPerMinutePerTon;
import static dev.thinair.units.Units.feet;
import static dev.thinair.units.Units.inches;
import static dev.thinair.units.Units.inchesOfWater;
import static dev.thinair.units.Units.percent;

import dev.thinair.altitude.SitePressure;
import dev.thinair.cycling.CoolingUnit;
import dev.thinair.cycling.Staging;
import dev.thinair.cycling.UnitState;
import dev.thinair.ducts.Airflow;
import dev.thinair.ducts.Blower;
import dev.thinair.ducts.Capacity;
import dev.thinair.ducts.Duct;
import dev.thinair.ducts.DuctMaterial;
import dev.thinair.ducts.DuctShape;
import dev.thinair.ducts.DuctSystem;
import dev.thinair.ducts.Filter;
import dev.thinair.ducts.Register;
import dev.thinair.psychro.AirStream;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.QuantityText;
import dev.thinair.units.Units;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;

/** What a shop's own program asks first: how much cooling can the ducts that are there carry? */
public final class Shop {
    private Shop() {}

    /** Prints the answer for an elevation in feet, 7200 if none is given. */
    public static void main(String[] args) {
        Quantity<Length> elevation = feet(args.length > 0 ? Double.parseDouble(args[0]) : 7200);
        Quantity<Power> largest = largestUnit(elevation);
        System.out.println(
                "These ducts carry "
                        + QuantityText.formatIn(largest, Units.TON_OF_REFRIGERATION, 3)
                        + " at "
                        + QuantityText.formatIn(elevation, Units.FOOT, 4));
        System.out.println("A unit of that size: " + unitOnThem(elevation, largest));
    }

    /** The largest nominal capacity the ducts can supply with air, at 350 standard cfm a ton. */
    static Quantity<Power> largestUnit(Quantity<Length> elevation) {
        return Capacity.largest(airflow(elevation), cubicFeetPerMinutePerTon(350));
    }

    /** How a typical unit of that capacity settles on these ducts on a hot afternoon. */
    static UnitState unitOnThem(Quantity<Length> elevation, Quantity<Power> capacity) {
        MoistAir air = roomAir(elevation);
        return CoolingUnit.typical(capacity, Staging.SINGLE)
                .steady(
                        air,
                        AirStream.ofVolumeFlow(air, airflow(elevation).actual()).dryAirFlow(),
                        celsius(33));
    }

    private static Airflow airflow(Quantity<Length> elevation) {
        Duct duct =
                Duct.of(
                                DuctShape.rectangular(inches(20), inches(8)),
                                feet(60),
                                DuctMaterial.GALVANIZED)
                        .withLossCoefficient(6);
        return DuctSystem.builder()
                .blower(
                        Blower.builder()
                                .speed("high")
                                .point(inchesOfWater(0.1), cubicFeetPerMinute(1580))
                                .point(inchesOfWater(0.5), cubicFeetPerMinute(1400))
                                .point(inchesOfWater(1.1), cubicFeetPerMinute(760))
                                .efficiency(percent(20))
                                .build())
                .filter(Filter.of(cubicFeetPerMinute(1000), inchesOfWater(0.2), percent(60)))
                .supplyRun(
                        "supply",
                        DuctSystem.SUPPLY_PLENUM,
                        "house",
                        duct,
                        Register.of(inches(24), inches(24)))
                .returnRun(
                        "return",
                        "house",
                        DuctSystem.RETURN_PLENUM,
                        duct,
                        Register.of(inches(24), inches(24)))
                .build()
                .solve(roomAir(elevation));
    }

    private static MoistAir roomAir(Quantity<Length> elevation) {
        return MoistAir.ofDryBulbAndRelativeHumidity(
                celsius(22), percent(40), SitePressure.standardAt(elevation).pressure());
    }
}
