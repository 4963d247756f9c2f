package dev.thinair.reference;

import static org.assertj.core.api.Assertions.assertThat;

import dev.thinair.psychro.MoistAir;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Mistakes with units that the compiler must catch, given to the compiler. */
class UnitSafetyTest {

    @TempDir private Path folder;

    /** Error messages of the compiler for one statement over the library. */
    private List<String> errors(String statement) throws IOException, URISyntaxException {
        String source =
                "import dev.thinair.psychro.*; import dev.thinair.altitude.*;"
                        + " import dev.thinair.units.*; import javax.measure.Quantity;"
                        + " import javax.measure.quantity.*; import static"
                        + " dev.thinair.units.Units.*;"
                        + " class Job { void run() { "
                        + statement
                        + " } }";
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        DiagnosticCollector<JavaFileObject> found = new DiagnosticCollector<>();
        JavaFileObject file =
                new SimpleJavaFileObject(
                        URI.create("string:///Job.java"), JavaFileObject.Kind.SOURCE) {
                    @Override
                    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                        return source;
                    }
                };
        String path =
                Stream.of(
                                MoistAir.class,
                                dev.thinair.altitude.SitePressure.class,
                                Quantity.class,
                                tech.units.indriya.AbstractQuantity.class)
                        .map(UnitSafetyTest::place)
                        .distinct()
                        .collect(Collectors.joining(java.io.File.pathSeparator));
        compiler.getTask(
                        null,
                        null,
                        found,
                        List.of("-proc:none", "-d", folder.toString(), "-classpath", path),
                        null,
                        List.of(file))
                .call();
        return found.getDiagnostics().stream()
                .filter(d -> d.getKind() == Diagnostic.Kind.ERROR)
                .map(d -> d.getMessage(Locale.ROOT))
                .collect(Collectors.toList());
    }

    private static String place(Class<?> type) {
        try {
            return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI())
                    .toString();
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void right_units_compile() throws IOException, URISyntaxException {
        assertThat(
                        errors(
                                "MoistAir a = MoistAir.ofDryBulbAndRelativeHumidity(fahrenheit(95),"
                                        + " percent(20), SitePressure.standardAt(feet(7200))"
                                        + ".pressure()); Quantity<TemperatureDifference> d ="
                                        + " difference(a.dryBulb(), a.wetBulb());"
                                        + " Quantity<Pressure> p ="
                                        + " WaterVapor.saturationPressure(celsius(20));"))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "SitePressure.standardAt(fahrenheit(7200));",
                "SitePressure.ofStation(feet(7200));",
                "MoistAir.saturated(fahrenheitDifference(10), kilopascals(84));",
                "MoistAir.saturated(pascals(20), kilopascals(84));",
                "MoistAir.ofDryBulbAndRelativeHumidity(celsius(35), celsius(20), pascals(1e5));",
                "MoistAir.ofDryBulbAndRelativeHumidity(celsius(35), gramsPerKilogram(20),"
                        + " pascals(1e5));",
                "MoistAir.ofDryBulbAndHumidityRatio(celsius(35), percent(20), pascals(1e5));",
                "Quantity<Temperature> d = difference(celsius(35), celsius(20));",
                "Quantity<TemperatureDifference> d = celsius(35);",
                "Quantity<Power> q = btus(12000);",
                "WaterVapor.saturationPressure(pascals(2000));",
                "WaterVapor.saturationTemperature(celsius(20));",
                "Si.kelvins(cubicFeetPerMinute(400), \"dry bulb\");",
                "AirHeatFactors.standardSi().sensibleHeat(cubicFeetPerMinute(1200),"
                        + " fahrenheit(20));"
            })
    void a_quantity_of_the_wrong_kind_does_not_compile(String statement)
            throws IOException, URISyntaxException {
        assertThat(errors(statement))
                .hasSize(1)
                .allSatisfy(
                        message ->
                                assertThat(message)
                                        .containsAnyOf("incompatible types", "no suitable method"));
    }
}
