package dev.thinair.psychro;

import dev.thinair.psychro.kernel.AirModel;

/**
 * How moist air is computed.
 *
 * <p>The difference between the two, from -40 to 60 degC and 0 to 4000 m, is tabulated in <a
 * href="{@docRoot}/dev/thinair/psychro/doc-files/ideal-and-real.html">ideal and real moist air</a>.
 */
public enum Formulation {

    /**
     * Ideal mixture of dry air and water vapor with Hyland-Wexler saturation, the handbook's
     * equations: the default. See {@link dev.thinair.psychro.kernel.IdealMoistAir}.
     */
    IDEAL(AirModel.IDEAL),

    /**
     * Real mixture: enhancement factor at saturation, virial corrections of volume and enthalpy.
     * About ten times slower; worth it above 60 degC near saturation and for comparison with
     * laboratory data. See {@link dev.thinair.psychro.kernel.RealMoistAir}.
     */
    REAL(AirModel.REAL);

    private final AirModel model;

    Formulation(AirModel model) {
        this.model = model;
    }

    /**
     * The kernel behind this formulation.
     *
     * @return the model, for kernel calls
     */
    public AirModel model() {
        return model;
    }
}
