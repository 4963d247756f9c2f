package dev.thinair.cycling;

/**
 * The limits a running unit is held against. All are data with their source; the trade's rules
 * disagree with each other, so change them where the maker's instructions say otherwise.
 *
 * @param icing apparatus dew point at or below which a wet coil ices, K
 * @param suctionWarning saturated suction temperature below which ice is near, K
 * @param returnAirFloor lowest return-air dry bulb for a direct-expansion unit, K
 * @param setupReturnAir lowest return-air dry bulb at which a well set-up coil must stay above
 *     freezing, K
 * @param condensing condensing temperature above which the high-pressure side is in danger, K
 * @param airflowSerious airflow per ton below which the shortage is serious, cfm per ton at
 *     standard density
 * @param airflowLow airflow per ton below which the airflow is low, cfm per ton at standard density
 * @param airflowDesign airflow per ton usually designed for, cfm per ton at standard density
 */
public record UnitLimits(
        Threshold icing,
        Threshold suctionWarning,
        Threshold returnAirFloor,
        Threshold setupReturnAir,
        Threshold condensing,
        Threshold airflowSerious,
        Threshold airflowLow,
        Threshold airflowDesign) {

    private static final UnitLimits STANDARD =
            new UnitLimits(
                    new Threshold("coil surface for ice", 273.15, "K", "freezing point of water"),
                    new Threshold(
                            "saturated suction for the early ice warning",
                            273.15,
                            "K",
                            "HVAC School, article \"32 deg Saturation\" (R-410A: 102 psig)"),
                    new Threshold(
                            "return-air floor",
                            (64 + 459.67) / 1.8,
                            "K",
                            Threshold.COMMON_PRACTICE),
                    new Threshold(
                            "return air for the field set-up rule",
                            (68 + 459.67) / 1.8,
                            "K",
                            Threshold.COMMON_PRACTICE),
                    new Threshold("condensing temperature", 338.15, "K", Threshold.COMMON_PRACTICE),
                    new Threshold(
                            "airflow per ton, serious", 300, "cfm/ton", Threshold.COMMON_PRACTICE),
                    new Threshold(
                            "airflow per ton, low", 350, "cfm/ton", Threshold.COMMON_PRACTICE),
                    new Threshold(
                            "airflow per ton, design", 400, "cfm/ton", Threshold.COMMON_PRACTICE));

    /**
     * Checks that nothing is missing.
     *
     * @param icing as the component
     * @param suctionWarning as the component
     * @param returnAirFloor as the component
     * @param setupReturnAir as the component
     * @param condensing as the component
     * @param airflowSerious as the component
     * @param airflowLow as the component
     * @param airflowDesign as the component
     * @throws IllegalArgumentException if a limit is missing
     */
    public UnitLimits {
        if (icing == null
                || suctionWarning == null
                || returnAirFloor == null
                || setupReturnAir == null
                || condensing == null
                || airflowSerious == null
                || airflowLow == null
                || airflowDesign == null) {
            throw new IllegalArgumentException("a unit limit is missing");
        }
    }

    /**
     * The usual limits.
     *
     * @return ice at 0 &deg;C, return-air floor 64 &deg;F, set-up rule 68 &deg;F, condensing 65
     *     &deg;C, airflow 300, 350 and 400 cfm per ton
     */
    public static UnitLimits standard() {
        return STANDARD;
    }
}
