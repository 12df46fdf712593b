package warmshelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.testing.Browser;

class ServeCommandTest {
    @TempDir
    private Path folder;

    @Test
    void the_first_start_prints_the_address_and_a_link_that_opens_the_group_and_a_stop_closes_the_data()
            throws Exception {
        Process serving = serve("--port", "0", "--data", folder.toString());
        try (BufferedReader out = serving.inputReader()) {
            List<String> lines = new ArrayList<>();
            while (lines.size() < 3) {
                String line = out.readLine();
                assertThat(line).as("printed before the end: %s", lines).isNotNull();
                lines.add(line);
            }

            assertThat(lines.get(0)).matches("Warmshelf is at http://localhost:[0-9]+");
            URI link = URI.create(lines.get(2));
            Browser browser = Browser.at("http://" + link.getAuthority());
            assertThat(browser.get(link.getPath()).text()).contains("Open your group");
        } finally {
            serving.destroy();
        }
        assertThat(serving.waitFor(20, TimeUnit.SECONDS)).isTrue();
        // Opening it again shows that the stop let go of the file.
        Settings.onFreePort(folder).openDatabase().close();
    }

    @Test
    void a_port_in_use_is_told_in_a_sentence() throws Exception {
        try (java.net.ServerSocket taken = new java.net.ServerSocket(0, 1, java.net.InetAddress.getLoopbackAddress())) {
            Process serving = serve("--port", String.valueOf(taken.getLocalPort()), "--data", folder.toString());

            String error = new String(serving.getErrorStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);

            assertThat(serving.waitFor()).isEqualTo(2);
            assertThat(error).contains("Port " + taken.getLocalPort() + " at 127.0.0.1 cannot be used");
        }
    }

    private static Process serve(String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                "warmshelf.App",
                "serve"));
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command).start();
    }
}
