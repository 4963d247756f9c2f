/** A large study, cut into parts that any machine or any number of machines may compute. */
package dev.thinair.examples.large;
