/** What thin air does to pressure, density, airflow, coils and burners. */
module dev.thinair.altitude {
    requires transitive dev.thinair.psychro;

    exports dev.thinair.altitude;
    exports dev.thinair.altitude.kernel;
}
