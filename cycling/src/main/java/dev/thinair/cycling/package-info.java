/** The installed system in operation, and its review. */
package dev.thinair.cycling;
