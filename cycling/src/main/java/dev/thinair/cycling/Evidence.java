package dev.thinair.cycling;

import javax.measure.Quantity;

/**
 * One number that a finding rests on.
 *
 * @param name what it is, in plain words
 * @param value the number with its unit; a count or a ratio is dimensionless
 */
public record Evidence(String name, Quantity<?> value) {

    /**
     * Checks that both are there.
     *
     * @param name as the component
     * @param value as the component
     * @throws IllegalArgumentException if one is null
     */
    public Evidence {
        if (name == null || value == null) {
            throw new IllegalArgumentException("evidence needs a name and a value, not null");
        }
    }
}
