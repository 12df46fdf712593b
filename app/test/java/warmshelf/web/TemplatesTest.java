package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import io.pebbletemplates.pebble.PebbleEngine;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TemplatesTest {
    private static final Path FOLDER = Path.of("templates");

    @ParameterizedTest
    @MethodSource("templates")
    void every_template_can_be_read(String template) {
        PebbleEngine engine = Renderer.engine(new Assets());

        assertThatCode(() -> engine.getTemplate(template)).doesNotThrowAnyException();
    }

    @ParameterizedTest
    @MethodSource("templates")
    void no_template_holds_what_the_content_policy_stops(String template) throws IOException {
        String text = Files.readString(FOLDER.resolve(template));

        assertThat(text)
                .doesNotContainPattern("(?i)<style|\\sstyle=|\\son[a-z]+=\"|<script(?![^>]*\\ssrc=)|\\|\\s*raw");
    }

    /** A form may come back without a field; a page that counts on it would then be a fault of ours. */
    @ParameterizedTest
    @MethodSource("templates")
    void what_was_typed_is_read_only_where_it_is_known_to_be_there(String template) throws IOException {
        String text = Files.readString(FOLDER.resolve(template))
                .replaceAll("typed contains (\"\\w+\"|name) ?%}[^{]*\\{\\{ \\w+\\.typed\\[\\1]", "");

        assertThat(text).doesNotContainPattern("\\{\\{ \\w+\\.typed");
    }

    @Test
    void the_templates_are_found() throws IOException {
        assertThat(templates()).contains("layout/page.peb", "group/sign-in.peb");
    }

    static List<String> templates() throws IOException {
        try (Stream<Path> files = Files.walk(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".peb"))
                    .map(file -> FOLDER.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }
}
