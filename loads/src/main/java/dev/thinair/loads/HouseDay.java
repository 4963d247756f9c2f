package dev.thinair.loads;

import dev.thinair.loads.kernel.HourlyInterpolation;
import dev.thinair.loads.kernel.HouseModel;
import dev.thinair.loads.kernel.HouseResponse;
import dev.thinair.loads.kernel.OutdoorHours;
import java.util.List;

/**
 * A compiled house on one day: sun, outdoor air and gains answered once, so that each setpoint
 * costs little. Immutable, so any thread may share it.
 */
public final class HouseDay {
    /**
     * Temperatures are kept as differences to this one, K: it cancels, and small numbers lose less.
     */
    static final double REFERENCE = 293.15;

    private static final Component[] COMPONENTS = Component.values();
    private static final int WIDTH = 2 * HourlyInterpolation.HARMONICS;

    final CompiledHouse compiled;
    final OutdoorHours hours;
    final boolean heating;
    final HouseResponse response;
    final double[] steady;
    final double[]
            base; // [(component * zones + zone) * 24], W for held zones, K above REFERENCE else
    final double[] latentGain; // [zone * 24], W, people and appliances

    HouseDay(CompiledHouse compiled, OutdoorHours hours, boolean heating) {
        this.compiled = compiled;
        this.hours = hours;
        this.heating = heating;
        this.response = heating ? compiled.winterResponse : compiled.response;
        this.steady = heating ? compiled.winterSteady : compiled.steady;
        int zones = compiled.model.zones();
        double[] samples = new double[COMPONENTS.length * zones * 24];
        double[] spectra = new double[COMPONENTS.length * zones * WIDTH];
        boolean[] used = new boolean[COMPONENTS.length * zones];
        this.latentGain = new double[zones * 24];
        Work work = new Work(samples, spectra, used);
        boundaries(work);
        if (!heating) {
            sun(work);
            gains(work);
        }
        for (int k = 0; k < used.length; k++) {
            if (used[k]) {
                HourlyInterpolation.addSynthesis(spectra, k * WIDTH, samples, k * 24);
            }
        }
        this.base = samples;
    }

    /** Where the day's answers are gathered. */
    private static final class Work {
        final double[] samples;
        final double[] spectra;
        final boolean[] used;
        final double[] series = new double[24];
        final double[] spectrum = new double[WIDTH];

        Work(double[] samples, double[] spectra, boolean[] used) {
            this.samples = samples;
            this.spectra = spectra;
            this.used = used;
        }
    }

    private void answer(Work work, int drive, int from, Component own) {
        HouseModel model = compiled.model;
        int zones = model.zones();
        for (int z = 0; z < zones; z++) {
            int k = CompiledHouse.booked(model, from, z, own).ordinal() * zones + z;
            response.addAnswer(drive, z, work.spectrum, 0, work.spectra, k * WIDTH);
            work.used[k] = true;
        }
    }

    private void boundaries(Work work) {
        CompiledHouse c = compiled;
        Films films = heating ? c.house.heatingFilms() : c.house.coolingFilms();
        double[] spectra = new double[c.boundaries.length * WIDTH];
        for (int b = 0; b < c.boundaries.length; b++) {
            c.boundaries[b].fill(hours, films.outside(), heating, work.series);
            for (int h = 0; h < 24; h++) {
                work.series[h] -= REFERENCE;
            }
            HourlyInterpolation.analyse(work.series, 0, spectra, b * WIDTH);
        }
        for (int w = 0; w < c.uses.length; w++) {
            int b = c.uses[w].boundary;
            if (b >= 0) {
                System.arraycopy(spectra, b * WIDTH, work.spectrum, 0, WIDTH);
                answer(work, response.wallDrive(w), c.model.front(w), c.uses[w].component);
            }
        }
        for (int z = 0; z < c.model.zones(); z++) {
            double g = c.model.airConductance(z);
            if (g > 0) {
                for (int h = 0; h < 24; h++) {
                    work.series[h] = g * (hours.dryBulb(h) - REFERENCE);
                }
                HourlyInterpolation.analyse(work.series, 0, work.spectrum, 0);
                answer(work, response.airDrive(z), z, Component.UNCONDITIONED_SPACES);
            }
        }
    }

    private void sun(Work work) {
        CompiledHouse c = compiled;
        int zones = c.model.zones();
        double[] radiant = new double[zones * 24];
        double[] convective = new double[zones * 24];
        boolean[] any = new boolean[zones];
        for (CompiledHouse.GlassUse glass : c.glasses) {
            glass.window.solarGain(
                    hours,
                    glass.surface.azimuthRadians(),
                    glass.surface.tiltRadians(),
                    work.series);
            double share = glass.window.solarRadiantFraction();
            any[glass.zone] = true;
            for (int h = 0; h < 24; h++) {
                radiant[glass.zone * 24 + h] += share * work.series[h];
                convective[glass.zone * 24 + h] += (1 - share) * work.series[h];
            }
        }
        for (int z = 0; z < zones; z++) {
            if (any[z]) {
                HourlyInterpolation.analyse(radiant, z * 24, work.spectrum, 0);
                answer(work, response.sunDrive(z), z, Component.WINDOW_SUN);
                toAir(work, z, convective, z * 24, Component.WINDOW_SUN);
            }
        }
    }

    /** Heat to a zone's air: at once a load where it is held, an answer elsewhere. */
    private void toAir(Work work, int zone, double[] heat, int at, Component own) {
        if (compiled.model.held(zone)) {
            int k = (own.ordinal() * compiled.model.zones() + zone) * 24;
            for (int h = 0; h < 24; h++) {
                work.samples[k + h] += heat[at + h];
            }
        } else {
            HourlyInterpolation.analyse(heat, at, work.spectrum, 0);
            answer(work, response.airDrive(zone), zone, own);
        }
    }

    private void gains(Work work) {
        List<Room> rooms = compiled.house.rooms();
        double[] convective = new double[24];
        for (int z = 0; z < rooms.size(); z++) {
            for (InternalGain gain : rooms.get(z).gains()) {
                Component own = component(gain);
                double share = gain.radiantFraction();
                for (int h = 0; h < 24; h++) {
                    double q = gain.sensible(h);
                    work.series[h] = share * q;
                    convective[h] = (1 - share) * q;
                    latentGain[z * 24 + h] += gain.latent(h);
                }
                if (share > 0) {
                    HourlyInterpolation.analyse(work.series, 0, work.spectrum, 0);
                    answer(work, response.radiantDrive(z), z, own);
                }
                toAir(work, z, convective, 0, own);
            }
        }
    }

    static Component component(InternalGain gain) {
        if (gain instanceof Occupants) {
            return Component.PEOPLE;
        }
        return gain instanceof Lighting ? Component.LIGHTS : Component.APPLIANCES;
    }

    /**
     * The house that is bound.
     *
     * @return compiled house
     */
    public CompiledHouse house() {
        return compiled;
    }

    /**
     * Load at a setpoint.
     *
     * @param setpoint what the rooms are kept at
     * @return load by hour, room and component
     * @throws IllegalArgumentException if the setpoint names a room that the house does not have
     */
    public DesignLoad load(Setpoint setpoint) {
        return new DesignLoad(this, setpoint);
    }
}
