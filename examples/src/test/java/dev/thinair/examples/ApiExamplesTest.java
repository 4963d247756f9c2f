package dev.thinair.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every code example in the comments of the library's API compiles and runs. */
class ApiExamplesTest {
    private static final List<String> MODULES =
            List.of("psychro", "altitude", "loads", "ducts", "cycling");
    private static final Pattern EXAMPLE =
            Pattern.compile("<pre>\\{@code\n(.*?)\\*\\s*}</pre>", Pattern.DOTALL);

    /** What the shorter examples take as given. */
    private static final String GIVEN =
            """
            var site = Site.of("invented", degrees(39), degrees(-106), ZoneOffset.ofHours(-7), feet(7200));
            var studWall = Assemblies.studWall89();
            var joists = Assemblies.atticCeiling();
            var picture = Window.of("picture", feet(6), feet(4), uValueIp(0.5), Glazing.clearDouble());
            var floor = Surface.mass("floor", Assemblies.woodFloor()).area(squareFeet(320)).build();
            var northRoof = Surface.roof("north", Assemblies.shingleRoof()).area(squareFeet(200)).facing(degrees(0)).tilt(degrees(25)).build();
            var southRoof = Surface.roof("south", Assemblies.shingleRoof()).area(squareFeet(200)).facing(degrees(180)).tilt(degrees(25)).build();
            var leakage = Infiltration.none();
            var fan = Ventilation.none();
            var bedroom = Room.named("bedroom").floorArea(squareFeet(150)).height(feet(8)).surface(floor).build();
            var siding = Layer.of(Material.of("siding", wattsPerMetreKelvin(0.11), kilogramsPerCubicMetre(540), joulesPerKilogramKelvin(1170), "invented"), millimetres(12));
            var sheathing = siding;
            var gypsum = siding;
            var batt = Layer.of(Material.of("batt", wattsPerMetreKelvin(0.04), kilogramsPerCubicMetre(12), joulesPerKilogramKelvin(800), "invented"), millimetres(89));
            var stud = Layer.of(Material.of("stud", wattsPerMetreKelvin(0.11), kilogramsPerCubicMetre(430), joulesPerKilogramKelvin(1630), "invented"), millimetres(89));
            """;

    @Test
    void examples_in_comments_run() throws Exception {
        Map<String, String> examples = examples();
        assertThat(examples.keySet())
                .contains(MODULES.stream().map(m -> m + "/module-info").toArray(String[]::new))
                .hasSizeGreaterThanOrEqualTo(11);
        for (String module : MODULES) {
            try (ShellRun shell = new ShellRun()) {
                shell.run(ShellTest.startUpWithoutWelcome());
                String own = examples.remove(module + "/module-info");
                assertThat(shell.run(own)).as(module).isNotBlank();
            }
        }
        // In an order in which each finds what it takes as given.
        List<String> order =
                List.of("CoolingDesignDay", "FramedAssembly", "Window", "Surface", "Room", "House");
        try (ShellRun shell = new ShellRun()) {
            shell.run(ShellTest.startUpWithoutWelcome() + GIVEN);
            for (String name : order) {
                // Declarations end in semicolons only at their last line.
                String example = examples.remove("loads/" + name);
                assertThat(example).as(name).isNotNull();
                shell.runWhole(example);
            }
        }
        assertThat(examples).as("examples that this test does not run yet").isEmpty();
    }

    private static Map<String, String> examples() throws IOException {
        Map<String, String> found = new LinkedHashMap<>();
        for (String module : MODULES) {
            try (Stream<Path> files = Files.walk(Path.of("..", module, "src", "main", "java"))) {
                for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                    Matcher example = EXAMPLE.matcher(Files.readString(file));
                    while (example.find()) {
                        String name = file.getFileName().toString().replace(".java", "");
                        String code = example.group(1).replaceAll("(?m)^ *\\* ?", "");
                        assertThat(found.put(module + "/" + name, code)).as("two in one").isNull();
                    }
                }
            }
        }
        return found;
    }
}
