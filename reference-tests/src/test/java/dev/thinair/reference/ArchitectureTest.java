package dev.thinair.reference;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The rules of DEVELOPERS.md that a machine can check. */
class ArchitectureTest {

    private static final String[] LIBRARY = {
        "dev.thinair.units..",
        "dev.thinair.working..",
        "dev.thinair.psychro..",
        "dev.thinair.altitude..",
        "dev.thinair.loads..",
        "dev.thinair.ducts..",
        "dev.thinair.cycling.."
    };

    private static JavaClasses all;

    @BeforeAll
    static void read() {
        all =
                new ClassFileImporter()
                        .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                        .importPackages("dev.thinair");
    }

    @Test
    void modules_depend_one_way() {
        layeredArchitecture()
                .consideringOnlyDependenciesInAnyPackage("dev.thinair..")
                .layer("base")
                .definedBy("dev.thinair.units..", "dev.thinair.working..", "dev.thinair.psychro..")
                .layer("altitude")
                .definedBy("dev.thinair.altitude..")
                .layer("loads")
                .definedBy("dev.thinair.loads..")
                .layer("ducts")
                .definedBy("dev.thinair.ducts..")
                .layer("cycling")
                .definedBy("dev.thinair.cycling..")
                .layer("users")
                .definedBy("dev.thinair.examples..", "dev.thinair.reference..")
                .whereLayer("base")
                .mayNotAccessAnyLayer()
                .whereLayer("altitude")
                .mayOnlyAccessLayers("base")
                .whereLayer("loads")
                .mayOnlyAccessLayers("base", "altitude")
                .whereLayer("ducts")
                .mayOnlyAccessLayers("base", "altitude")
                .whereLayer("cycling")
                .mayOnlyAccessLayers("base", "altitude", "loads", "ducts")
                .whereLayer("users")
                .mayNotBeAccessedByAnyLayer()
                .check(all);
    }

    @Test
    void kernels_do_not_know_the_typed_layer() {
        noClasses()
                .that()
                .resideInAPackage("dev.thinair.*.kernel..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("javax.measure..", "tech.units..", "si.uom..")
                .check(all);
    }

    @Test
    void the_library_neither_reads_nor_writes_logs_or_reflects() {
        noClasses()
                .that()
                .resideInAnyPackage(LIBRARY)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "java.io..",
                        "java.nio.file..",
                        "java.net..",
                        "java.util.logging..",
                        "java.lang.reflect..",
                        "org.slf4j..",
                        "java.util.prefs..",
                        "java.sql..",
                        "java.awt..")
                .check(all);
    }

    @Test
    void static_fields_are_final() {
        fields().that()
                .areDeclaredInClassesThat()
                .resideInAnyPackage(LIBRARY)
                .and()
                .areStatic()
                .should()
                .beFinal()
                .check(all);
    }

    @Test
    void kernel_classes_are_final_or_abstractions() {
        classes()
                .that()
                .resideInAPackage("dev.thinair.*.kernel..")
                .and()
                .areTopLevelClasses()
                .and()
                .areNotInterfaces()
                .should()
                .haveModifier(com.tngtech.archunit.core.domain.JavaModifier.FINAL)
                .check(all);
    }
}
