package dev.thinair.cycling;

import dev.thinair.units.FlowPerCapacity;
import dev.thinair.units.TemperatureDifference;
import dev.thinair.working.Working;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * Something a review found: what it is, the numbers it rests on, the limit they were held against,
 * and who says so. Each kind is a record with its own principal numbers.
 */
public sealed interface Finding {

    /**
     * What every finding says.
     *
     * @param title one line
     * @param plainWords a few sentences a customer understands
     * @param evidence the numbers, the most telling first
     * @param criterion the limit and its source
     * @param severity how much it matters
     * @param confidence how sure it is
     * @param caution what to beware of, if the matter can hurt someone
     */
    record Statement(
            String title,
            String plainWords,
            List<Evidence> evidence,
            Criterion criterion,
            Severity severity,
            Confidence confidence,
            Optional<String> caution) {

        /**
         * Checks that all are there and copies the evidence.
         *
         * @param title as the component
         * @param plainWords as the component
         * @param evidence as the component
         * @param criterion as the component
         * @param severity as the component
         * @param confidence as the component
         * @param caution as the component
         * @throws IllegalArgumentException if something is null or there is no evidence
         */
        public Statement {
            if (title == null
                    || plainWords == null
                    || evidence == null
                    || criterion == null
                    || severity == null
                    || confidence == null
                    || caution == null) {
                throw new IllegalArgumentException("a finding's statement must not hold null");
            }
            if (evidence.isEmpty()) {
                throw new IllegalArgumentException("a finding needs evidence: " + title);
            }
            evidence = List.copyOf(evidence);
        }
    }

    /**
     * What the finding says.
     *
     * @return the statement
     */
    Statement statement();

    /**
     * One line.
     *
     * @return the title
     */
    default String title() {
        return statement().title();
    }

    /**
     * A few sentences a customer understands.
     *
     * @return the text
     */
    default String plainWords() {
        return statement().plainWords();
    }

    /**
     * The numbers, the most telling first.
     *
     * @return at least one
     */
    default List<Evidence> evidence() {
        return statement().evidence();
    }

    /**
     * The limit and its source.
     *
     * @return the criterion
     */
    default Criterion criterion() {
        return statement().criterion();
    }

    /**
     * How much it matters.
     *
     * @return the severity
     */
    default Severity severity() {
        return statement().severity();
    }

    /**
     * How sure it is.
     *
     * @return the confidence
     */
    default Confidence confidence() {
        return statement().confidence();
    }

    /**
     * What to beware of.
     *
     * @return a caution, if the matter can hurt someone
     */
    default Optional<String> caution() {
        return statement().caution();
    }

    /**
     * How the finding follows from its numbers.
     *
     * @return the steps; the last one's result is the number held against the criterion
     */
    default Working working() {
        return FindingWorkings.of(this);
    }

    /**
     * The system as found has no state in which it runs: the blower has no operating point on these
     * ducts, or coil, compressor and condenser have no balance somewhere on the design day.
     *
     * @param statement what the finding says
     * @param reason what the model met, with its numbers
     */
    record DoesNotRun(Statement statement, String reason) implements Finding {}

    /**
     * The refrigerant charge is off, so that part of the evaporator is starved or part of the
     * condenser flooded.
     *
     * @param statement what the finding says
     * @param lost capacity lost at design conditions; empty if it cannot be told, because the
     *     blower has no operating point or the unit no balance there
     */
    record ChargeOff(Statement statement, Optional<Quantity<Power>> lost) implements Finding {}

    /**
     * Too little air for the unit's rated capacity.
     *
     * @param statement what the finding says
     * @param actual airflow per rated capacity
     * @param standard the same mass of air as a flow of standard air
     */
    record LowAirflow(
            Statement statement,
            Quantity<FlowPerCapacity> actual,
            Quantity<FlowPerCapacity> standard)
            implements Finding {}

    /**
     * The coil's surface falls below freezing, or comes close.
     *
     * @param statement what the finding says
     * @param coil lowest surface temperature
     * @param suction lowest saturated suction temperature
     */
    record CoilIce(Statement statement, Quantity<Temperature> coil, Quantity<Temperature> suction)
            implements Finding {}

    /**
     * The ducts cannot carry the air that the unit needs here.
     *
     * @param statement what the finding says
     * @param carries rated capacity the ducts can carry
     * @param installed rated capacity installed
     */
    record DuctsTooSmall(Statement statement, Quantity<Power> carries, Quantity<Power> installed)
            implements Finding {}

    /**
     * The wanted setpoint is not held on the design day.
     *
     * @param statement what the finding says
     * @param miss how far above the thermostat's band the house gets
     * @param degreeHours temperature above the band, summed over time, K h
     */
    record SetpointMissed(
            Statement statement, Quantity<TemperatureDifference> miss, double degreeHours)
            implements Finding {}

    /**
     * The unit is larger than the load needs.
     *
     * @param statement what the finding says
     * @param excess capacity above the load at design conditions
     * @param right capacity that would fit
     */
    record UnitTooLarge(Statement statement, Quantity<Power> excess, Quantity<Power> right)
            implements Finding {}

    /**
     * The unit is too small for the wanted setpoint.
     *
     * @param statement what the finding says
     * @param miss how far the house gets above the band on the design day
     * @param right capacity that would hold it
     */
    record UnitTooSmall(
            Statement statement, Quantity<TemperatureDifference> miss, Quantity<Power> right)
            implements Finding {}

    /**
     * The wanted setpoint is below what the refrigerant side should be run at.
     *
     * @param statement what the finding says
     * @param wanted the setpoint
     * @param floor lowest return air for this unit
     */
    record SetpointTooLow(
            Statement statement, Quantity<Temperature> wanted, Quantity<Temperature> floor)
            implements Finding {}

    /**
     * The unit starts too often and runs too short.
     *
     * @param statement what the finding says
     * @param startsPerHour starts in the busiest hour
     * @param meanRun mean length of a run
     * @param penalty electricity lost by cycling, as a share of the steady electricity
     */
    record ShortCycling(
            Statement statement,
            int startsPerHour,
            Quantity<Time> meanRun,
            Quantity<Dimensionless> penalty)
            implements Finding {}

    /**
     * The filter takes more pressure than it should.
     *
     * @param statement what the finding says
     * @param drop pressure drop at the present airflow
     * @param cleanDrop pressure drop of the same filter when clean
     */
    record FilterLoaded(Statement statement, Quantity<Pressure> drop, Quantity<Pressure> cleanDrop)
            implements Finding {}

    /**
     * Supply registers are shut or partly shut.
     *
     * @param statement what the finding says
     * @param names which ones
     * @param regained airflow regained when they are opened, as a share of the present airflow
     */
    record RegistersShut(Statement statement, List<String> names, Quantity<Dimensionless> regained)
            implements Finding {

        /**
         * Copies the names.
         *
         * @param statement as the component
         * @param names as the component
         * @param regained as the component
         */
        public RegistersShut {
            names = List.copyOf(names);
        }
    }

    /**
     * The condenser is dirty.
     *
     * @param statement what the finding says
     * @param lost capacity lost at design conditions; empty if it cannot be told, because the
     *     blower has no operating point or the unit no balance there
     * @param wasted extra power at design conditions; empty where the lost capacity is
     */
    record CondenserDirty(
            Statement statement, Optional<Quantity<Power>> lost, Optional<Quantity<Power>> wasted)
            implements Finding {}

    /**
     * The return side takes too large a share of the pressure.
     *
     * @param statement what the finding says
     * @param drop pressure lost on the return side
     */
    record ReturnRestricted(Statement statement, Quantity<Pressure> drop) implements Finding {}

    /**
     * The house gets too humid.
     *
     * @param statement what the finding says
     * @param peak highest relative humidity of the day
     */
    record HumidityHigh(Statement statement, Quantity<Dimensionless> peak) implements Finding {}
}
