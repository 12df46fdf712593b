package warmshelf.jar;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import warmshelf.testing.Everything;

/** The packaged jar says what it is made of, in the format of CycloneDX. */
class BillOfMaterialsIT {
    private static final String BILL = "META-INF/sbom/warmshelf.cdx.json";
    private static final Pattern LIBRARY = Pattern.compile("META-INF/maven/([^/]+)/([^/]+)/pom\\.properties");

    /** Parts of angus-mail, in its jar and of its version. */
    private static final Set<String> PARTS = Set.of(
            "org.eclipse.angus:angus-core",
            "org.eclipse.angus:imap",
            "org.eclipse.angus:logging-mailhandler",
            "org.eclipse.angus:pop3",
            "org.eclipse.angus:smtp");

    /** Libraries put their own name into the jar, most of them; the bill is made from the build. */
    @Test
    void names_every_library_that_lies_in_the_jar_and_none_that_only_tests_use() throws IOException {
        try (ZipFile jar = new ZipFile(System.getProperty("warmshelf.jar"))) {
            ZipEntry bill = jar.getEntry(BILL);
            Everything.require(bill != null, "the bill of materials, which 'mvn -Pbill' puts into the jar,");
            JsonNode read = new ObjectMapper().readTree(jar.getInputStream(bill));
            Set<String> named = new HashSet<>();
            read.get("components").forEach(each -> {
                named.add(each.get("group").asText() + ":" + each.get("name").asText());
                assertThat(each.get("version").asText()).isNotEmpty();
                assertThat(each.get("purl").asText()).startsWith("pkg:maven/");
            });
            Set<String> inJar = new TreeSet<>();
            jar.stream().map(ZipEntry::getName).map(LIBRARY::matcher).forEach(match -> {
                if (match.matches() && !match.group(1).equals("org.warmshelf")) {
                    inJar.add(match.group(1) + ":" + match.group(2));
                }
            });

            assertThat(read.get("bomFormat").asText()).isEqualTo("CycloneDX");
            assertThat(inJar).hasSizeGreaterThan(30);
            assertThat(named).contains("io.javalin:javalin", "org.jooq:jooq", "com.h2database:h2");
            assertThat(named).noneMatch(name -> name.contains("junit") || name.contains("playwright"));
            inJar.removeAll(PARTS);
            assertThat(named).containsAll(inJar);
        }
    }
}
