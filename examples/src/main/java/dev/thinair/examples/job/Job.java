package dev.thinair.examples.job;

import dev.thinair.cycling.CoolingUnit;
import dev.thinair.cycling.HeatPump;
import dev.thinair.cycling.InstalledSystem;
import dev.thinair.cycling.Tariff;
import dev.thinair.cycling.Thermostat;
import dev.thinair.ducts.DuctSystem;
import dev.thinair.loads.CompiledHouse;
import dev.thinair.loads.CoolingDesignDay;
import dev.thinair.loads.HeatingDesignDay;
import dev.thinair.loads.HourlyWeather;
import dev.thinair.loads.House;
import dev.thinair.loads.Site;
import dev.thinair.units.Units;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;

/**
 * One service call, as the job file describes it, in the library's own models.
 *
 * @param title of the job
 * @param complaint in the customer's words
 * @param inchPoundFirst whether the file's own unit system is inch-pound
 * @param site the place
 * @param coolingDay summer design day
 * @param heatingDay winter design day
 * @param weather a typical year, from the file's climate, its weather file, or its design days
 * @param house the house
 * @param ducts the ducts as found
 * @param unit the unit as found
 * @param thermostat the thermostat as found
 * @param thermostatRoom where the thermostat hangs, if the file says so
 * @param tariff what electricity costs
 * @param furnace the furnace, if there is one
 * @param heatPump the unit's heating side, if it has one
 * @param lifeStarts starts that the compressor is taken to last, if the file says so
 * @param wishes setpoints and humidity
 */
public record Job(
        String title,
        String complaint,
        boolean inchPoundFirst,
        Site site,
        CoolingDesignDay coolingDay,
        HeatingDesignDay heatingDay,
        HourlyWeather weather,
        House house,
        DuctSystem ducts,
        CoolingUnit unit,
        Thermostat thermostat,
        Optional<String> thermostatRoom,
        Tariff tariff,
        Optional<Burner> furnace,
        Optional<HeatPump> heatPump,
        OptionalInt lifeStarts,
        Wishes wishes) {

    /** The job file shipped with the program. */
    public static final String SHIPPED = "larkspur-bench.yaml";

    /**
     * What the customer wants, and what is usual.
     *
     * @param cooling setpoint wanted in summer
     * @param heating setpoint wanted in winter
     * @param usualCooling usual summer design temperature
     * @param usualHeating usual winter design temperature
     * @param relativeHumidity indoors in summer
     */
    public record Wishes(
            Quantity<Temperature> cooling,
            Quantity<Temperature> heating,
            Quantity<Temperature> usualCooling,
            Quantity<Temperature> usualHeating,
            Quantity<Dimensionless> relativeHumidity) {}

    /**
     * The furnace's burner.
     *
     * @param input sea-level rating
     * @param efficiency heat to the air over input
     */
    public record Burner(Quantity<Power> input, double efficiency) {}

    /**
     * Reads a job file.
     *
     * @param path the file
     * @return the job
     * @throws JobFileException if the file cannot be used; the message is one line
     */
    public static Job read(Path path) throws JobFileException {
        Path parent = path.toAbsolutePath().getParent();
        return of(JobReader.read(path), parent);
    }

    /**
     * Reads a job file held in memory; a weather file is looked for in the working directory.
     *
     * @param text the file's text
     * @param name what errors call it
     * @return the job
     * @throws JobFileException if the text cannot be used; the message is one line
     */
    public static Job read(String text, String name) throws JobFileException {
        return of(JobReader.read(text, name), Path.of(""));
    }

    /**
     * Reads the job file shipped with the program.
     *
     * @return the job
     * @throws JobFileException never, unless the program was built wrongly
     */
    public static Job shipped() throws JobFileException {
        try (InputStream in = Job.class.getResourceAsStream("/dev/thinair/examples/" + SHIPPED)) {
            return of(JobReader.read(in, SHIPPED), Path.of(""));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * House, ducts, unit, thermostat and tariff as one installed system, as found.
     *
     * @return the system, with the wanted setpoint
     */
    public InstalledSystem installed() {
        return installed(house.compile(site), coolingDay);
    }

    /**
     * The same job at another place: same house, equipment and weather, other air.
     *
     * @param place the other place
     * @return the system there
     */
    public InstalledSystem installedAt(Site place) {
        return installed(house.compile(place), coolingDay.withSite(place));
    }

    /**
     * The installed system with its house already compiled.
     *
     * @param compiled the house at its place
     * @param day the design day there
     * @return the system
     */
    public InstalledSystem installed(CompiledHouse compiled, CoolingDesignDay day) {
        InstalledSystem.Builder system =
                InstalledSystem.builder()
                        .house(compiled)
                        .designDay(day)
                        .ducts(ducts)
                        .unit(unit)
                        .thermostat(thermostat)
                        .tariff(tariff)
                        .wantedSetpoint(wishes.cooling());
        thermostatRoom.ifPresent(system::thermostatRoom);
        return system.build();
    }

    private static Job of(Part part, Path folder) throws JobFileException {
        JobHouse house = new JobHouse(part);
        JobUnit unit = new JobUnit(part);
        Site site = house.site();
        Part customer = part.part("customer");
        return new Job(
                part.text("title"),
                customer.text("complaint"),
                part.part("site").amount("elevation", Length.class).getUnit().equals(Units.FOOT),
                site,
                house.coolingDay(site),
                house.heatingDay(site),
                house.weather(site, folder),
                house.house(),
                new JobDucts(part).ducts(),
                unit.unit(),
                unit.thermostat(),
                part.part("thermostat").has("room")
                        ? Optional.of(part.part("thermostat").text("room"))
                        : Optional.empty(),
                unit.tariff(),
                part.partIfGiven("furnace")
                        .map(
                                f ->
                                        new Burner(
                                                f.amount("input", Power.class),
                                                f.ratio("efficiency"))),
                unit.heatPump(),
                part.part("unit").has("life-starts")
                        ? OptionalInt.of(part.part("unit").count("life-starts"))
                        : OptionalInt.empty(),
                new Wishes(
                        customer.amount("cooling-setpoint", Temperature.class),
                        customer.amount("heating-setpoint", Temperature.class),
                        customer.amount(
                                "usual-cooling-setpoint", Temperature.class, Units.fahrenheit(74)),
                        customer.amount(
                                "usual-heating-setpoint", Temperature.class, Units.fahrenheit(70)),
                        customer.amount("indoor-relative-humidity", Dimensionless.class)));
    }
}
