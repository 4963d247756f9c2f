package dev.thinair.examples.report;

import dev.thinair.units.Density;
import dev.thinair.units.FlowPerCapacity;
import dev.thinair.units.MassFlow;
import dev.thinair.units.TemperatureDifference;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * Writes quantities in both unit systems, the job file's own first and the other in brackets, with
 * as many digits as the trade reads.
 */
public final class Show {
    private final boolean inchPoundFirst;

    public Show(boolean inchPoundFirst) {
        this.inchPoundFirst = inchPoundFirst;
    }

    public boolean inchPoundFirst() {
        return inchPoundFirst;
    }

    private String both(String inchPound, String si) {
        // Spaces that do not break keep a number and its unit on one line.
        String a = inchPound.replace(' ', '\u00a0');
        String b = si.replace(' ', '\u00a0');
        return inchPoundFirst ? a + " (" + b + ")" : b + " (" + a + ")";
    }

    /** The value in a unit, for drawings and tests. */
    public static <Q extends Quantity<Q>> double in(Quantity<Q> q, Unit<Q> unit) {
        return q.to(unit).getValue().doubleValue();
    }

    /** A number with so many decimals; zero never carries a sign. */
    public static String number(double v, int decimals) {
        String s = String.format(Locale.ROOT, "%,." + decimals + "f", v);
        return s.matches("-0(\\.0*)?") ? s.substring(1) : s;
    }

    public String temperature(Quantity<Temperature> t) {
        return both(
                number(in(t, Units.FAHRENHEIT), 1) + " °F",
                number(in(t, Units.CELSIUS), 1) + " °C");
    }

    public String difference(Quantity<TemperatureDifference> d) {
        return both(
                number(in(d, Units.FAHRENHEIT_DIFFERENCE), 1) + " °F",
                number(in(d, Units.KELVIN_DIFFERENCE), 1) + " K");
    }

    /** Degree hours, given in K h. */
    public String degreeHours(double kelvinHours) {
        return both(number(1.8 * kelvinHours, 1) + " °F h", number(kelvinHours, 1) + " K h");
    }

    public String length(Quantity<Length> l) {
        return both(number(in(l, Units.FOOT), 0) + " ft", number(in(l, Units.METRE), 0) + " m");
    }

    public String size(Quantity<Length> l) {
        return both(
                number(in(l, Units.INCH), 0) + " in.", number(in(l, Units.MILLIMETRE), 0) + " mm");
    }

    public String area(Quantity<Area> a) {
        return both(
                number(in(a, Units.SQUARE_FOOT), 0) + " ft²",
                number(in(a, Units.SQUARE_METRE), 0) + " m²");
    }

    public String airPressure(Quantity<Pressure> p) {
        return both(
                number(in(p, Units.INCH_OF_MERCURY), 2) + " in. Hg",
                number(in(p, Units.KILOPASCAL), 1) + " kPa");
    }

    public String staticPressure(Quantity<Pressure> p) {
        return both(
                number(in(p, Units.INCH_OF_WATER), 2) + " in. w.g.",
                number(in(p, Units.PASCAL), 0) + " Pa");
    }

    public String flow(Quantity<VolumeFlow> f) {
        return both(
                number(in(f, Units.CUBIC_FOOT_PER_MINUTE), 0) + " cfm",
                number(in(f, Units.LITRE_PER_SECOND), 0) + " L/s");
    }

    public String mass(Quantity<MassFlow> m) {
        return both(
                number(in(m, Units.POUND_PER_HOUR), 0) + " lb/h",
                number(in(m, Units.KILOGRAM_PER_SECOND), 3) + " kg/s");
    }

    public String perTon(Quantity<FlowPerCapacity> f) {
        return both(
                number(in(f, Units.CUBIC_FOOT_PER_MINUTE_PER_TON), 0) + " cfm/ton",
                number(in(f, Units.LITRE_PER_SECOND_PER_KILOWATT), 0) + " L/s per kW");
    }

    public String heat(Quantity<Power> p) {
        return both(
                number(Math.rint(in(p, Units.BTU_PER_HOUR) / 100) * 100, 0) + " BTU/h",
                number(in(p, Units.KILOWATT), 1) + " kW");
    }

    public String tons(Quantity<Power> p) {
        return both(
                number(in(p, Units.TON_OF_REFRIGERATION), 2) + " tons",
                number(in(p, Units.KILOWATT), 1) + " kW");
    }

    public String electricPower(Quantity<Power> p) {
        return number(in(p, Units.WATT), 0) + " W";
    }

    public String energy(Quantity<Energy> e) {
        return number(in(e, Units.KILOWATT_HOUR), 1) + " kWh";
    }

    public String energyWhole(Quantity<Energy> e) {
        return number(in(e, Units.KILOWATT_HOUR), 0) + " kWh";
    }

    public String density(Quantity<Density> d) {
        return both(
                number(in(d, Units.POUND_PER_CUBIC_FOOT), 4) + " lb/ft³",
                number(in(d, Units.KILOGRAM_PER_CUBIC_METRE), 3) + " kg/m³");
    }

    public String percent(Quantity<Dimensionless> r) {
        return number(in(r, Units.PERCENT), 0) + " %";
    }

    public String ratio(Quantity<Dimensionless> r) {
        return number(in(r, Units.RATIO), 3);
    }

    public String hours(Quantity<Time> t) {
        return number(in(t, Units.HOUR), 1) + " h";
    }

    /** Minutes up to two hours, hours beyond. */
    public String span(Quantity<Time> t) {
        double minutes = in(t, Units.MINUTE);
        return minutes < 120 ? number(minutes, 0) + " min" : number(minutes / 60, 1) + " h";
    }

    public String money(double amount, String currency) {
        return number(amount, amount < 20 ? 2 : 0) + " " + currency;
    }

    /** Whatever quantity a finding brings as evidence. */
    @SuppressWarnings("unchecked") // the dimension was tested before each cast
    public String any(Quantity<?> q) {
        Unit<?> u = q.getUnit();
        if (is(u, Units.KELVIN_DIFFERENCE) && isDifference(u)) {
            return difference((Quantity<TemperatureDifference>) q);
        }
        if (is(u, Units.KELVIN)) {
            return temperature((Quantity<Temperature>) q);
        }
        if (is(u, Units.CUBIC_METRE_PER_SECOND_PER_WATT)) {
            return perTon((Quantity<FlowPerCapacity>) q);
        }
        if (is(u, Units.CUBIC_METRE_PER_SECOND)) {
            return flow((Quantity<VolumeFlow>) q);
        }
        if (is(u, Units.KILOGRAM)) {
            Quantity<Mass> m = (Quantity<Mass>) q;
            return both(
                    number(in(m, Units.POUND), 1) + " lb",
                    number(in(m, Units.KILOGRAM), 1) + " kg");
        }
        if (is(u, Units.KILOGRAM_PER_SECOND)) {
            return mass((Quantity<MassFlow>) q);
        }
        if (is(u, Units.PASCAL)) {
            Quantity<Pressure> p = (Quantity<Pressure>) q;
            return in(p, Units.PASCAL) > 20_000 ? airPressure(p) : staticPressure(p);
        }
        if (is(u, Units.WATT)) {
            Quantity<Power> p = (Quantity<Power>) q;
            return u.equals(Units.TON_OF_REFRIGERATION)
                    ? tons(p)
                    : u.equals(Units.WATT) ? electricPower(p) : heat(p);
        }
        if (is(u, Units.SECOND)) {
            return span((Quantity<Time>) q);
        }
        if (is(u, Units.JOULE)) {
            return energy((Quantity<Energy>) q);
        }
        if (is(u, Units.METRE)) {
            return size((Quantity<Length>) q);
        }
        if (is(u, Units.KILOGRAM_PER_CUBIC_METRE)) {
            return density((Quantity<Density>) q);
        }
        if (is(u, Units.RATIO)) {
            Quantity<Dimensionless> r = (Quantity<Dimensionless>) q;
            double v = in(r, Units.RATIO);
            return u.equals(Units.PERCENT) ? percent(r) : number(v, v == Math.rint(v) ? 0 : 2);
        }
        return q.toString();
    }

    private static boolean is(Unit<?> u, Unit<?> like) {
        return u.getDimension().equals(like.getDimension());
    }

    private static boolean isDifference(Unit<?> u) {
        return u.equals(Units.KELVIN_DIFFERENCE) || u.equals(Units.FAHRENHEIT_DIFFERENCE);
    }
}
