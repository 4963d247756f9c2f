package com.example.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.thinair.cycling.CoolingUnit;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import org.junit.jupiter.api.Test;

class ShopTest {

    @Test
    void thin_air_carries_less() {
        double high = Si.watts(Shop.largestUnit(Units.feet(7200)), "capacity");
        double low = Si.watts(Shop.largestUnit(Units.feet(0)), "capacity");
        // The same blower on the same ducts moves nearly the same volume, so the mass follows the
        // density, which at 7,200 ft is 0.765 of that at sea level.
        assertTrue(high / low > 0.70 && high / low < 0.80, high + " W, " + low + " W");
        Shop.main(new String[0]);
    }

    @Test
    void runs_on_the_path_it_says() {
        String wanted = System.getProperty("shop.module");
        assertEquals(wanted, String.valueOf(Shop.class.getModule().getName()));
        // On the module path the library comes as modules of its own, by the names it promises.
        assertEquals(
                wanted.equals("null") ? "null" : "dev.thinair.cycling",
                String.valueOf(CoolingUnit.class.getModule().getName()));
    }
}
