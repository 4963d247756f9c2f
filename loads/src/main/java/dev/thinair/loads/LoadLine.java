package dev.thinair.loads;

import java.util.Locale;

/**
 * One line of a room's load table, in SI numbers.
 *
 * @param name surface, window, gain or flow
 * @param component under which it is booked
 * @param area m2; 0 where there is none
 * @param transmittance U as modelled, films included, W/(m2 K); 0 where there is none
 * @param outside temperature that drives it at the hour, C; NaN where there is none
 * @param load heat to the room air at the hour, W
 */
public record LoadLine(
        String name,
        Component component,
        double area,
        double transmittance,
        double outside,
        double load) {

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s: %.1f W", name, load);
    }
}
