package dev.thinair.loads;

import dev.thinair.loads.kernel.FloatingAir;
import dev.thinair.loads.kernel.HourlyInterpolation;
import dev.thinair.loads.kernel.HouseModel;
import dev.thinair.loads.kernel.HouseResponse;
import dev.thinair.loads.kernel.OutdoorHours;
import java.util.Arrays;

/**
 * A compiled house on one day: sun, outdoor air and gains answered once, so that each setpoint
 * costs little. Immutable, so any thread may share it.
 */
public final class HouseDay {
    /**
     * Temperatures are kept as differences to this one, K: it cancels, and small numbers lose less.
     */
    static final double REFERENCE = 293.15;

    private static final int WIDTH = CompiledHouse.WIDTH;

    final CompiledHouse compiled;
    final OutdoorHours hours;
    final boolean heating;
    final HouseResponse response; // with all air held
    final FloatingAir floating;
    final double[] steady;
    final double[] total; // [zone * 24], W for held zones, K above REFERENCE else
    final double[] latentGain; // [zone * 24], W, people and appliances
    private final double[] spectra; // [(spectrum * zones + zone) * WIDTH]
    private final double[] sunToAir; // [zone * 24], W; empty without sun

    HouseDay(CompiledHouse compiled, OutdoorHours hours, boolean heating) {
        this.compiled = compiled;
        this.hours = hours;
        this.heating = heating;
        this.response = heating ? compiled.winter().walls : compiled.walls;
        this.floating = heating ? compiled.winter().floating : compiled.floating;
        this.steady = heating ? compiled.winter().steady : compiled.steady;
        HouseModel model = compiled.model;
        int zones = model.zones();
        double[] sums = new double[2 * zones * WIDTH];
        double[] heat; // to the air of free spaces
        total = new double[zones * 24];
        spectra = new double[CompiledHouse.SPECTRA * zones * WIDTH];
        if (heating) {
            latentGain = new double[zones * 24];
            sunToAir = new double[0];
            heat = floating.heat();
            boundaries(sums, compiled.winter().ofBoundary, compiled.winter().passed, heat);
        } else {
            CompiledHouse.Gains gains = compiled.survey.gains;
            int first = CompiledHouse.FIRST_OF_GAINS * zones * WIDTH;
            System.arraycopy(gains.spectra, 0, spectra, first, gains.spectra.length);
            latentGain = gains.latent;
            sunToAir = new double[zones * 24];
            heat = gains.heat.clone();
            boundaries(sums, compiled.survey.ofBoundary, compiled.survey.passed, heat);
            sun(sums, heat);
            double[] direct = gains.direct;
            for (int i = 0; i < total.length; i++) {
                total[i] = sunToAir[i];
                for (int k = 0; k < CompiledHouse.Gains.KINDS.length; k++) {
                    total[i] += direct[k * zones * 24 + i];
                }
            }
        }
        CompiledHouse.bookOthers(model, sums, spectra, 0);
        int spaces = CompiledHouse.spectrumOf(Component.UNCONDITIONED_SPACES) * zones * WIDTH;
        floating.answer(heat, spectra, spaces);
        double[] sum = new double[WIDTH];
        for (int z = 0; z < zones; z++) {
            if (!model.held(z)) {
                HourlyInterpolation.addSynthesis(spectra, spaces + z * WIDTH, total, z * 24);
                continue;
            }
            Arrays.fill(sum, 0);
            for (int k = 0; k < CompiledHouse.SPECTRA; k++) {
                int at = (k * zones + z) * WIDTH;
                for (int i = 0; i < WIDTH; i++) {
                    sum[i] += spectra[at + i];
                }
            }
            HourlyInterpolation.addSynthesis(sum, 0, total, z * 24);
        }
    }

    private void boundaries(
            double[] sums,
            FloatingAir.Drives[] groups,
            CompiledHouse.Passed[] passed,
            double[] freeHeat) {
        CompiledHouse c = compiled;
        Films films = heating ? c.house.heatingFilms() : c.house.coolingFilms();
        double[] outside = new double[c.boundaries.length * WIDTH];
        double[] series = new double[24];
        for (int b = 0; b < c.boundaries.length; b++) {
            c.boundaries[b].fill(hours, films.outside(), heating, series);
            for (int h = 0; h < 24; h++) {
                series[h] -= REFERENCE;
            }
            if (c.boundaries[b].steady()) {
                outside[b * WIDTH] = series[0];
            } else {
                HourlyInterpolation.analyse(series, 0, outside, b * WIDTH);
            }
            passed[b].answer(outside, b * WIDTH, sums);
        }
        int zones = c.model.zones();
        for (CompiledHouse.DriveUse d : c.survey.drives) {
            if (c.model.held(d.zone)) {
                int own = (CompiledHouse.spectrumOf(d.component) * zones + d.zone) * WIDTH;
                int drive = response.wallDrive(d.wall);
                response.addAnswer(drive, d.zone, outside, d.boundary * WIDTH, spectra, own);
            }
        }
        if (floating.count() == 0) {
            return;
        }
        for (int b = 0; b < groups.length; b++) {
            boolean mean = heating || c.boundaries[b].steady();
            floating.add(groups[b], outside, b * WIDTH, mean, freeHeat);
        }
        double[] air = new double[0];
        for (int z = 0; z < c.model.zones(); z++) {
            double g = c.model.airConductance(z);
            if (g > 0) {
                if (air.length == 0) {
                    air = new double[WIDTH];
                    for (int h = 0; h < 24; h++) {
                        series[h] = hours.dryBulb(h) - REFERENCE;
                    }
                    HourlyInterpolation.analyse(series, 0, air, 0);
                }
                floating.addHeat(floating.freeIndex(z), g, air, 0, freeHeat);
            }
        }
    }

    private void sun(double[] sums, double[] freeHeat) {
        CompiledHouse c = compiled;
        int zones = c.model.zones();
        CompiledHouse.GlassView[] views = c.survey.views;
        double[] series = new double[views.length * 24];
        double[] one = new double[24];
        double[] spectrum = new double[views.length * WIDTH];
        for (int v = 0; v < views.length; v++) {
            views[v].window.solarGain(hours, views[v].azimuth, views[v].tilt, one);
            System.arraycopy(one, 0, series, v * 24, 24);
            HourlyInterpolation.analyse(one, 0, spectrum, v * WIDTH);
        }
        double[] radiant = new double[zones * WIDTH];

        boolean[] any = new boolean[zones];
        for (CompiledHouse.GlassUse glass : c.survey.glasses) {
            int z = glass.zone;
            any[z] = true;
            double share = glass.window.solarRadiantFraction();
            double faces = share * glass.times;
            double air = (1 - share) * glass.times;
            int from = glass.view * WIDTH;
            for (int i = 0; i < WIDTH; i++) {
                radiant[z * WIDTH + i] += faces * spectrum[from + i];
            }
            if (air == 0) {
                continue;
            }
            if (c.model.held(z)) {
                for (int h = 0; h < 24; h++) {
                    sunToAir[z * 24 + h] += air * series[glass.view * 24 + h];
                }
            } else {
                floating.addHeat(floating.freeIndex(z), air, spectrum, from, freeHeat);
            }
        }
        for (int z = 0; z < zones; z++) {
            if (any[z]) {
                int own = CompiledHouse.spectrumOf(Component.WINDOW_SUN);
                int drive = response.sunDrive(z);
                CompiledHouse.answer(
                        c.model, response, drive, z, own, radiant, z * WIDTH, sums, spectra);
            }
        }
        for (int v = 0; v < views.length && floating.count() > 0; v++) {
            floating.add(c.survey.ofView[v], spectrum, v * WIDTH, false, freeHeat);
        }
    }

    /** Part of a zone's answer at an hour, the indoor temperature at the reference. */
    double part(int z, Component component, int hour) {
        int zones = compiled.model.zones();
        int spectrum = CompiledHouse.spectrumOf(component);
        if (spectrum < 0) {
            return 0;
        }
        double value = HourlyInterpolation.at(spectra, (spectrum * zones + z) * WIDTH, hour);
        int i = z * 24 + hour;
        if (component == Component.WINDOW_SUN && !heating) {
            value += sunToAir[i];
        }
        for (int k = 0; k < CompiledHouse.Gains.KINDS.length && !heating; k++) {
            if (component == CompiledHouse.Gains.KINDS[k]) {
                value += compiled.survey.gains.direct[k * zones * 24 + i];
            }
        }
        return value;
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
