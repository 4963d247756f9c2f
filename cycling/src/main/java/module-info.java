/** How the installed system runs: capacity, coil temperature, starts, energy, bill. */
module dev.thinair.cycling {
    requires transitive dev.thinair.loads;
    requires transitive dev.thinair.ducts;
    // Commons Math 3 has no module descriptor: this is the name derived from its file.
    requires commons.math3;

    exports dev.thinair.cycling;
    exports dev.thinair.cycling.kernel;
}
