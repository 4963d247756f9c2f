package dev.thinair.cycling;

import dev.thinair.cycling.kernel.HouseDrive;
import dev.thinair.cycling.kernel.ModalHouse;
import dev.thinair.loads.HourlyWeather;
import java.util.List;

/** What an installed system needs to know of its house: the border to the loads module. */
interface Building {

    /** The house in modal coordinates; the same object at each call. */
    ModalHouse modal();

    /** Names of the rooms. */
    List<String> rooms();

    /** Node of a room's air. */
    int airNode(int room);

    /** Volume of the house's air, m3. */
    double airVolume();

    /** Pressure of the site, Pa. */
    double pressure();

    /** What acts on the house on the design day. */
    HouseDrive designDay(double moistureCapacity);

    /** What acts on the house in a series of weather. */
    HouseDrive season(HourlyWeather weather, double moistureCapacity);

    /** Outdoor dry bulb of the design day at an hour, K. */
    double outdoorDryBulb(int hour);

    /** Outdoor humidity ratio of the design day at an hour. */
    double outdoorHumidityRatio(int hour);

    /** Sensible load of the design day hour by hour at a setpoint, W. */
    double[] sensibleLoad(double setpoint);

    /** Sensible load of each room in its own worst hour at a setpoint, W. */
    double[] roomPeaks(double setpoint);

    /** Latent load of the design day hour by hour at a setpoint, W. */
    double[] latentLoad(double setpoint);
}
