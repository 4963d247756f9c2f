/** What thin air does, each question with its own answer. */
package dev.thinair.altitude;
