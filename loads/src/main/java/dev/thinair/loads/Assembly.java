package dev.thinair.loads;

import dev.thinair.units.ThermalResistance;
import dev.thinair.units.ThermalTransmittance;
import dev.thinair.working.Working;
import java.util.List;
import javax.measure.Quantity;

/**
 * A wall, roof, ceiling, floor or partition as built: layers between two faces, films not included.
 *
 * <p>Plain layers: {@link #outsideIn} or {@link #insideOut}. Bridged by studs or rafters: {@link
 * FramedAssembly}. Generic ones with sources: {@link Assemblies}. Immutable.
 */
public sealed interface Assembly permits LayeredAssembly, FramedAssembly {

    /**
     * An assembly from its layers, listed from the outside in, as handbook tables do.
     *
     * @param name what it is called in tables, not blank
     * @param layers at least one layer
     * @return the assembly
     * @throws IllegalArgumentException if the name is blank or there is no layer
     */
    static Assembly outsideIn(String name, Layer... layers) {
        return LayeredAssembly.of(name, List.of(layers), true);
    }

    /**
     * An assembly from its layers, listed from the inside out.
     *
     * @param name what it is called in tables, not blank
     * @param layers at least one layer
     * @return the assembly
     * @throws IllegalArgumentException if the name is blank or there is no layer
     */
    static Assembly insideOut(String name, Layer... layers) {
        return LayeredAssembly.of(name, List.of(layers), false);
    }

    /**
     * A section through the assembly that runs from face to face.
     *
     * @param fraction share of the area, above 0 and at most 1
     * @param layers layers from the inside out
     */
    record Path(double fraction, List<Layer> layers) {
        /**
         * Copies the list.
         *
         * @param fraction share of the area
         * @param layers layers from the inside out
         */
        public Path {
            layers = List.copyOf(layers);
        }

        double[] resistances() {
            double[] r = new double[layers.size()];
            for (int l = 0; l < r.length; l++) {
                r[l] = layers.get(l).squareMetreKelvinsPerWatt();
            }
            return r;
        }

        double[] capacities() {
            double[] c = new double[layers.size()];
            for (int l = 0; l < c.length; l++) {
                c[l] = layers.get(l).joulesPerSquareMetreKelvin();
            }
            return c;
        }
    }

    /**
     * The assembly's name.
     *
     * @return name
     */
    String name();

    /**
     * Parallel sections that heat is taken to flow through; one for plain layers. The balance of a
     * room treats each as a surface of its own.
     *
     * @return sections whose fractions sum to 1
     */
    List<Path> paths();

    /**
     * Resistance from face to face, without films.
     *
     * @return resistance, given in m2 K/W
     */
    Quantity<ThermalResistance> resistance();

    /**
     * Resistance from face to face for kernel calls.
     *
     * @return resistance, m2 K/W
     */
    double squareMetreKelvinsPerWatt();

    /**
     * Resistance from air to air with given film resistances.
     *
     * @param insideFilm inside surface resistance, m2 K/W, above 0
     * @param outsideFilm outside surface resistance, m2 K/W, above 0
     * @return resistance, m2 K/W
     * @throws IllegalArgumentException if a film is not above 0
     */
    double totalResistance(double insideFilm, double outsideFilm);

    /**
     * Thermal transmittance between indoor and outdoor air with the design films of ISO 6946.
     *
     * @param flow direction of the heat flow
     * @return U, given in W/(m2 K)
     */
    Quantity<ThermalTransmittance> transmittance(HeatFlow flow);

    /**
     * The steps to the U-value of {@link #transmittance}.
     *
     * @param flow direction of the heat flow
     * @return steps; the last one's result is U
     */
    default Working working(HeatFlow flow) {
        return HouseWorkings.transmittance(this, flow);
    }

    /**
     * Heat capacity of a square metre, for kernel calls.
     *
     * @return capacity, J/(m2 K)
     */
    double joulesPerSquareMetreKelvin();
}
