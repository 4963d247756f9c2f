/** Leave this file out and the same program runs on the class path. */
module com.example.shop {
    // Reads the other four modules and the quantities of JSR 385 with it.
    requires dev.thinair.cycling;
}
