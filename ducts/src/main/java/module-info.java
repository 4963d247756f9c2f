/** How much air a blower really moves through the ducts it has. */
module dev.thinair.ducts {
    requires transitive dev.thinair.altitude;
    // Commons Math 3 has no module descriptor: this is the name derived from its file.
    requires commons.math3;

    exports dev.thinair.ducts;
    exports dev.thinair.ducts.kernel;
}
