package dev.thinair.examples.job;

import dev.thinair.units.Si;
import dev.thinair.units.VolumeFlow;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;

/** Checks what no single value can show: that names meet, ducts connect, and parts fit together. */
final class JobLinks {
    static final String SUPPLY_PLENUM = "supply plenum";
    static final String RETURN_PLENUM = "return plenum";
    static final String OUTDOORS = "outdoors";

    private JobLinks() {}

    static void check(Part job) throws JobFileException {
        house(job.part("house"));
        ducts(job.part("ducts"), names(job.part("house").parts("rooms")).keySet());
        if (job.part("thermostat").has("room")) {
            known(
                    job.part("thermostat"),
                    "room",
                    names(job.part("house").parts("rooms")).keySet(),
                    "house.rooms");
        }
        Part day = job.part("cooling-day");
        double dry = Si.kelvins(day.amount("dry-bulb", Temperature.class), "dry bulb");
        double wet = Si.kelvins(day.amount("wet-bulb", Temperature.class), "wet bulb");
        if (wet > dry) {
            throw day.fault("wet-bulb", "is above the dry bulb", "allowed is up to the dry bulb");
        }
        Part customer = job.part("customer");
        Set<Integer> months = new HashSet<>();
        if (job.has("climate") && job.has("weather-file")) {
            throw job.fault(
                    "weather-file",
                    "is given beside climate",
                    "give one of them, or none for a year made from the two design days");
        }
        tariff(job.part("tariff"));
        List<Part> climate = job.has("climate") ? job.part("climate").parts("months") : List.of();
        for (Part month : climate) {
            if (!months.add(month.count("month"))) {
                throw month.fault("month", "month given twice", "give each month once");
            }
        }
        if (Si.kelvins(customer.amount("heating-setpoint", Temperature.class), "heating setpoint")
                > dry) {
            throw customer.fault(
                    "heating-setpoint",
                    "is above the summer design dry bulb",
                    "allowed is a usual room temperature");
        }
    }

    private static void tariff(Part tariff) throws JobFileException {
        for (String key : List.of("peak-from", "peak-to")) {
            if (tariff.has("peak-energy") != tariff.has(key)) {
                throw tariff.fault(
                        tariff.has("peak-energy") ? "peak-energy" : key,
                        "peak hours are described in part",
                        "give peak-energy, peak-from and peak-to together, or none of them");
            }
        }
        if (tariff.has("peak-days") && !tariff.has("peak-energy")) {
            throw tariff.fault(
                    "peak-days", "there are no peak hours", "give peak-energy, or leave it out");
        }
        String currency = tariff.price("energy").currency();
        for (String key : List.of("peak-energy", "demand")) {
            if (tariff.has(key) && !tariff.price(key).currency().equals(currency)) {
                throw tariff.fault(
                        key,
                        "is in another currency than the energy price",
                        "give both in " + currency);
            }
        }
    }

    private static void house(Part house) throws JobFileException {
        Map<String, Part> materials = names(house.parts("materials"));
        Map<String, Part> assemblies = names(house.parts("assemblies"));
        Map<String, Part> glazings = names(house.parts("glazings"));
        for (Part assembly : house.parts("assemblies")) {
            boolean framed = false;
            for (Part layer : assembly.parts("layers")) {
                if (layer.has("material")) {
                    known(layer, "material", materials.keySet(), "materials");
                }
                if (layer.has("framing")) {
                    framed = true;
                    known(layer, "framing", materials.keySet(), "materials");
                    if (!layer.has("material")) {
                        throw layer.fault(
                                "framing",
                                "framing in a layer without a material",
                                "give the layer's material and thickness instead of its resistance");
                    }
                    if (!assembly.has("framing-fraction")) {
                        throw layer.fault(
                                "framing",
                                "framing without its share",
                                "give framing-fraction in the assembly \""
                                        + assembly.text("name")
                                        + "\"");
                    }
                }
            }
            if (assembly.has("framing-fraction") && !framed) {
                throw assembly.fault(
                        "framing-fraction",
                        "no layer has framing",
                        "name the framing in a layer or leave framing-fraction out");
            }
        }
        Map<String, Part> rooms = names(house.parts("rooms"));
        Map<String, Part> spaces = names(house.parts("spaces"));
        for (Part space : house.parts("spaces")) {
            if (rooms.containsKey(space.text("name"))) {
                throw space.fault("name", "is a room's name too", "give every place its own name");
            }
            enclosure(space, assemblies.keySet(), glazings.keySet());
        }
        for (Part room : house.parts("rooms")) {
            enclosure(room, assemblies.keySet(), glazings.keySet());
            if (room.has("ceiling")) {
                known(room.part("ceiling"), "assembly", assemblies.keySet(), "assemblies");
                known(room.part("ceiling"), "under", spaces.keySet(), "spaces");
            }
            if (room.has("floor")) {
                Part floor = room.part("floor");
                known(floor, "assembly", assemblies.keySet(), "assemblies");
                if (floor.has("over") && !floor.text("over").equals(OUTDOORS)) {
                    known(floor, "over", spaces.keySet(), "spaces");
                }
            }
        }
    }

    private static void enclosure(Part room, Set<String> assemblies, Set<String> glazings)
            throws JobFileException {
        for (Part roof : room.parts("roofs")) {
            known(roof, "assembly", assemblies, "assemblies");
        }
        for (Part wall : room.parts("walls")) {
            known(wall, "assembly", assemblies, "assemblies");
            double openings = 0;
            for (Part window : wall.parts("windows")) {
                known(window, "glazing", glazings, "glazings");
                openings +=
                        window.count("count", 1)
                                * Si.metres(window.amount("width", Length.class), "width")
                                * Si.metres(window.amount("height", Length.class), "height");
            }
            for (Part door : wall.parts("doors")) {
                openings += Si.squareMetres(door.amount("area", Area.class), "door area");
            }
            double gross = Si.squareMetres(wall.amount("area", Area.class), "wall area");
            if (openings > gross) {
                throw wall.fault(
                        "area",
                        "the windows and doors are larger than the wall",
                        String.format(
                                java.util.Locale.ROOT,
                                "allowed is at least %.1f ft2 (%.1f m2), the wall's area with its openings",
                                openings / 0.09290304,
                                openings));
            }
        }
    }

    private static void ducts(Part ducts, Set<String> rooms) throws JobFileException {
        Map<String, Part> trunks = names(ducts.parts("trunks"));
        for (String plenum : List.of(SUPPLY_PLENUM, RETURN_PLENUM)) {
            if (trunks.containsKey(plenum)) {
                throw trunks.get(plenum).fault("name", "is taken", "give the trunk another name");
            }
        }
        List<String> sources = new ArrayList<>(List.of(SUPPLY_PLENUM));
        sources.addAll(trunks.keySet());
        for (Part trunk : ducts.parts("trunks")) {
            connected(trunk, sources);
        }
        for (Part trunk : ducts.parts("trunks")) {
            Set<String> passed = new HashSet<>();
            Part at = trunk;
            while (!at.text("from").equals(SUPPLY_PLENUM)) {
                if (!passed.add(at.text("name"))) {
                    throw trunk.fault(
                            "from",
                            "these trunks feed each other and never reach the supply plenum",
                            "one of them must leave \"" + SUPPLY_PLENUM + "\"");
                }
                at = trunks.get(at.text("from"));
            }
        }
        Set<String> feeding = new HashSet<>();
        for (Part run : ducts.parts("runs")) {
            connected(run, sources);
            feeding.add(run.text("from"));
            known(run, "room", rooms, "house.rooms");
            flexibleOnly(run);
            Part register = run.part("register");
            if (register.has("open-share") && !register.text("position").equals("partly")) {
                throw register.fault(
                        "open-share",
                        "the register is " + register.text("position"),
                        "give open-share only with position: partly");
            }
        }
        for (Part trunk : ducts.parts("trunks")) {
            flexibleOnly(trunk);
            feeding.add(trunk.text("from"));
        }
        for (Part trunk : ducts.parts("trunks")) {
            if (!feeding.contains(trunk.text("name"))) {
                throw trunk.fault(
                        "name",
                        "nothing leaves this trunk",
                        "let a run or another trunk come from it, or leave it out");
            }
        }
        List<Part> all = new ArrayList<>(ducts.parts("trunks"));
        all.addAll(ducts.parts("runs"));
        all.addAll(ducts.parts("returns"));
        names(all);
        for (Part back : ducts.parts("returns")) {
            known(back, "room", rooms, "house.rooms");
            flexibleOnly(back);
        }
        Part filter = ducts.part("filter");
        if (Si.pascals(filter.amount("found-drop", Pressure.class), "found drop")
                < Si.pascals(filter.amount("clean-drop", Pressure.class), "clean drop")) {
            throw filter.fault(
                    "found-drop", "is below the clean drop", "allowed is the clean drop or more");
        }
        Part coil = ducts.part("coil");
        if (Si.pascals(coil.amount("wet-drop", Pressure.class), "wet drop")
                < Si.pascals(coil.amount("dry-drop", Pressure.class), "dry drop")) {
            throw coil.fault(
                    "wet-drop", "is below the dry drop", "allowed is the dry drop or more");
        }
        Part blower = ducts.part("blower");
        for (Part speed : blower.parts("speeds")) {
            double pressure = Double.NEGATIVE_INFINITY;
            double flow = Double.POSITIVE_INFINITY;
            for (Part point : speed.parts("points")) {
                double p = Si.pascals(point.amount("static-pressure", Pressure.class), "pressure");
                double q =
                        Si.cubicMetresPerSecond(point.amount("airflow", VolumeFlow.class), "flow");
                if (!(p > pressure && q < flow)) {
                    throw point.fault(
                            "static-pressure",
                            "the points of a blower speed are out of order",
                            "from point to point the static pressure must rise and the airflow fall");
                }
                pressure = p;
                flow = q;
            }
        }
        known(
                blower,
                "running-speed",
                names(blower.parts("speeds")).keySet(),
                "ducts.blower.speeds");
    }

    private static void connected(Part duct, Collection<String> sources) throws JobFileException {
        String from = duct.text("from");
        if (!sources.contains(from)) {
            throw duct.fault(
                    "from",
                    "\""
                            + duct.text("name")
                            + "\" is not connected: nothing is called "
                            + JobReader.quoted(from),
                    suggestion(from, sources) + "allowed is " + String.join(" | ", sources));
        }
        if (from.equals(duct.text("name"))) {
            throw duct.fault(
                    "from",
                    "a duct cannot feed itself",
                    "allowed is " + String.join(" | ", sources));
        }
    }

    private static void flexibleOnly(Part duct) throws JobFileException {
        if (duct.has("compression") && !duct.text("material").equals("flexible")) {
            throw duct.fault(
                    "compression",
                    "only flexible duct can be compressed",
                    "leave compression out for " + duct.text("material") + " duct");
        }
    }

    private static void known(Part part, String key, Set<String> names, String list)
            throws JobFileException {
        String name = part.text(key);
        if (!names.contains(name)) {
            throw part.fault(
                    key,
                    "nothing is called " + JobReader.quoted(name),
                    suggestion(name, names)
                            + "allowed is a name from "
                            + list
                            + ": "
                            + String.join(" | ", names));
        }
    }

    private static String suggestion(String typed, Collection<String> names) {
        return Nearest.of(typed, names).map(n -> "did you mean " + n + "? ").orElse("");
    }

    private static Map<String, Part> names(List<Part> parts) throws JobFileException {
        Map<String, Part> map = new LinkedHashMap<>();
        for (Part part : parts) {
            Part before = map.put(part.text("name"), part);
            if (before != null) {
                throw part.fault(
                        "name",
                        "\"" + part.text("name") + "\" is taken",
                        "every entry needs its own name (first on line "
                                + before.placeOf("name").line()
                                + ")");
            }
        }
        return map;
    }
}
