/** How much heat a house gains and loses, hour by hour, room by room. */
module dev.thinair.loads {
    requires transitive dev.thinair.altitude;
    requires net.e175.klaus.solarpositioning;
    // Commons Math 3 has no module descriptor: this is the name derived from its file.
    requires commons.math3;

    exports dev.thinair.loads;
    exports dev.thinair.loads.kernel;
}
