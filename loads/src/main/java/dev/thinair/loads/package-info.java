/** Houses, sites and design days, and the heat they gain and lose. */
package dev.thinair.loads;
