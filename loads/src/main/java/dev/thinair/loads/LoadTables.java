package dev.thinair.loads;

import java.util.List;
import java.util.Locale;

/** Prints loads so that every line can be checked by hand. */
final class LoadTables {
    private static final double BTU_PER_HOUR = 1055.05585262 / 3600; // W, NIST SP 811

    private LoadTables() {}

    static String house(DesignLoad load) {
        int peak = load.peakHour();
        List<String> rooms = load.rooms();
        StringBuilder s = new StringBuilder();
        s.append(
                String.format(
                        Locale.ROOT,
                        "%s of %s; %s\nblock peak at %02d:00 local standard time, outdoors %.1f C (%.1f F)\n",
                        load.heating() ? "Heating load" : "Cooling load",
                        load.houseName(),
                        load.setpoint(),
                        peak,
                        load.outdoorCelsius(peak),
                        load.outdoorCelsius(peak) * 1.8 + 32));
        int first = 24;
        for (Component k : Component.values()) {
            first = Math.max(first, k.label().length());
        }
        s.append(pad("W", first));
        for (String room : rooms) {
            s.append(right(room, 12));
        }
        s.append(right("house", 12)).append("\n");
        for (Component k : Component.values()) {
            double sum = 0;
            boolean any = false;
            StringBuilder line = new StringBuilder(pad(k.label(), first));
            for (String room : rooms) {
                double q = load.partAt(room, k, peak);
                sum += q;
                any |= Math.abs(q) >= 0.05;
                line.append(number(q, 12));
            }
            if (any) {
                s.append(line).append(number(sum, 12)).append("\n");
            }
        }
        s.append(pad("sensible", first));
        for (String room : rooms) {
            s.append(number(load.sensibleAt(room, peak), 12));
        }
        s.append(number(load.blockSensibleAt(peak), 12)).append("\n");
        s.append(pad("latent", first));
        for (String room : rooms) {
            s.append(number(load.latent(room, peak).getValue().doubleValue(), 12));
        }
        s.append(number(load.blockLatentAt(peak), 12)).append("\n");
        s.append(pad("room's own sensible peak", first));
        for (String room : rooms) {
            s.append(number(load.roomPeak(room).getValue().doubleValue(), 12));
        }
        double sum = load.sumOfRoomPeaks().getValue().doubleValue();
        s.append(number(sum, 12)).append("\n");
        s.append(pad("at hour", first));
        for (String room : rooms) {
            s.append(right(String.format(Locale.ROOT, "%02d:00", load.roomPeakHour(room)), 12));
        }
        s.append("\n");
        double block = load.peak().getValue().doubleValue();
        s.append(
                String.format(
                        Locale.ROOT,
                        "block peak %.0f W (%.0f Btu/h, %.2f tons); sum of room peaks %.0f W (%.0f Btu/h)\n",
                        block,
                        block / BTU_PER_HOUR,
                        block / BTU_PER_HOUR / 12_000,
                        sum,
                        sum / BTU_PER_HOUR));
        List<Room> all = load.houseRooms();
        for (int z = 0; z < all.size(); z++) {
            if (!all.get(z).conditioned()) {
                s.append(
                        String.format(
                                Locale.ROOT,
                                "%s at that hour: %.1f C (%.1f F)\n",
                                all.get(z).name(),
                                load.freeCelsius(z, peak),
                                load.freeCelsius(z, peak) * 1.8 + 32));
            }
        }
        return s.toString();
    }

    static String room(DesignLoad load, String room, int hour) {
        StringBuilder s = new StringBuilder();
        s.append(
                String.format(
                        Locale.ROOT,
                        "%s, sensible load at %02d:00 local standard time, outdoors %.1f C (%.1f F)\n",
                        room,
                        hour,
                        load.outdoorCelsius(hour),
                        load.outdoorCelsius(hour) * 1.8 + 32));
        s.append(
                String.format(
                        Locale.ROOT,
                        "%-28s%-22s%10s%12s%12s%10s%10s\n",
                        "line",
                        "booked under",
                        "area m2",
                        "U W/(m2 K)",
                        "drive C",
                        "W",
                        "Btu/h"));
        double sum = 0;
        for (LoadLine line : load.lines(room, hour)) {
            sum += line.load();
            s.append(
                    String.format(
                            Locale.ROOT,
                            "%-28s%-22s%10s%12s%12s%10.1f%10.0f\n",
                            line.name(),
                            line.component().label(),
                            line.area() == 0 ? "" : String.format(Locale.ROOT, "%.2f", line.area()),
                            line.transmittance() == 0
                                    ? ""
                                    : String.format(Locale.ROOT, "%.3f", line.transmittance()),
                            Double.isNaN(line.outside())
                                    ? ""
                                    : String.format(Locale.ROOT, "%.1f", line.outside()),
                            line.load(),
                            line.load() / BTU_PER_HOUR));
        }
        s.append(String.format(Locale.ROOT, "%-94s%10.1f%10.0f\n", "sum", sum, sum / BTU_PER_HOUR));
        return s.toString();
    }

    private static String pad(String text, int width) {
        return String.format(Locale.ROOT, "%-" + width + "s", text);
    }

    private static String right(String text, int width) {
        String cut = text.length() < width ? text : text.substring(0, width - 1);
        return String.format(Locale.ROOT, "%" + width + "s", cut);
    }

    private static String number(double value, int width) {
        return String.format(Locale.ROOT, "%" + width + ".1f", value);
    }
}
