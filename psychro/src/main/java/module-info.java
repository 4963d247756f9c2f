/** The air itself: moist-air states and processes, the units of the trade, and shown work. */
module dev.thinair.psychro {
    requires transitive java.measure;
    requires tech.units.indriya;
    requires si.uom.units;
    requires static org.apiguardian.api;

    exports dev.thinair.psychro;
    exports dev.thinair.psychro.kernel;
    exports dev.thinair.units;
    exports dev.thinair.working;
}
