package dev.thinair.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.xpath.XPath;
import javax.xml.xpath.XPathConstants;
import javax.xml.xpath.XPathExpressionException;
import javax.xml.xpath.XPathFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * The parent pom as the bill of materials that embedders import. That its import works is shown by
 * the build of {@code examples/embed}, whose dependency on the library names no version.
 */
class BillOfMaterialsTest {
    private static final Path PARENT = Path.of("..", "pom.xml");
    private static final Path EMBED = Path.of("embed", "pom.xml");

    @Test
    void manages_the_five_modules_and_what_they_need_at_run_time_and_nothing_else()
            throws Exception {
        assertThat(all(PARENT, "/project/dependencyManagement//dependency/artifactId"))
                .containsExactlyInAnyOrder(
                        "thinair-psychro",
                        "thinair-altitude",
                        "thinair-loads",
                        "thinair-ducts",
                        "thinair-cycling",
                        "unit-api",
                        "indriya",
                        "si-units",
                        "apiguardian-api",
                        "commons-math3",
                        "solarpositioning");
    }

    /** Other versions would have to be fetched, and the build would need a network each time. */
    @Test
    void embedding_project_builds_with_the_versions_of_this_build() throws Exception {
        assertThat(one(EMBED, "//dependencyManagement//dependency/version"))
                .isEqualTo(one(PARENT, "/project/version"));
        assertThat(one(EMBED, "//dependency[artifactId='junit-jupiter']/version"))
                .isEqualTo(one(PARENT, "//properties/junit.version"));
        List<String> plugins = all(EMBED, "//plugin/artifactId");
        assertThat(plugins).contains("maven-compiler-plugin", "maven-surefire-plugin");
        for (String plugin : plugins) {
            assertThat(one(EMBED, "//plugin[artifactId='" + plugin + "']/version"))
                    .as(plugin)
                    .isEqualTo(one(PARENT, "//properties/" + plugin + ".version"));
        }
    }

    static String one(Path pom, String path) throws Exception {
        List<String> found = all(pom, path);
        assertThat(found).as("%s in %s", path, pom).hasSize(1);
        return found.get(0);
    }

    static List<String> all(Path pom, String path)
            throws ParserConfigurationException,
                    IOException,
                    SAXException,
                    XPathExpressionException {
        Document document =
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(pom.toFile());
        XPath xpath = XPathFactory.newInstance().newXPath();
        NodeList nodes = (NodeList) xpath.evaluate(path, document, XPathConstants.NODESET);
        List<String> found = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            found.add(nodes.item(i).getTextContent().trim());
        }
        return found;
    }
}
