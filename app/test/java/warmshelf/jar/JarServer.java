package warmshelf.jar;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import warmshelf.testing.Browser;

/** {@code serve} of the packaged jar as a process of its own, on any free port. */
final class JarServer implements AutoCloseable {
    private static final String STARTED = "Warmshelf is at ";
    private static final String OPENING = "/open/";

    private final Process process;
    private final BufferedReader out;
    private final String address;

    private JarServer(Process process, BufferedReader out, String address) {
        this.process = process;
        this.out = out;
        this.address = address;
    }

    /** Starts it and waits until it says where it is. */
    static JarServer start(String... options) {
        return startBy(List.of(), options);
    }

    /** The same by a Java that is told something besides. */
    static JarServer startBy(List<String> java, String... options) {
        List<String> words = new ArrayList<>(List.of("serve", "--port", "0"));
        words.addAll(List.of(options));
        try {
            ProcessBuilder builder = JarRun.command(words);
            builder.command().addAll(1, java);
            Process process =
                    builder.redirectError(ProcessBuilder.Redirect.DISCARD).start();
            BufferedReader out =
                    new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
            String address = lineWith(STARTED, out);
            return new JarServer(process, out, address.substring(STARTED.length()));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static String lineWith(String words, BufferedReader out) throws IOException {
        List<String> before = new ArrayList<>();
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            if (line.contains(words)) {
                return line;
            }
            before.add(line);
        }
        throw new AssertionError("it ended without saying '" + words + "': " + before);
    }

    String address() {
        return address;
    }

    /** The path of the link that makes the first coordinator; it is printed where nobody has opened the group. */
    String openingPath() {
        try {
            String line = lineWith(OPENING, out);
            return line.substring(line.indexOf(OPENING));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Stops it; the answer is what it still had to say. */
    String lastWords() {
        close();
        return out.lines().collect(Collectors.joining("\n"));
    }

    Browser browser() {
        return Browser.at(address);
    }

    /** A browser of the coordinator who has just opened the group by the link that was printed. */
    Browser openGroup() {
        Browser browser = browser();
        browser.postAsIs(
                openingPath(),
                Map.ofEntries(
                        Map.entry("groupName", "Chester Bowl Seed Starters"),
                        Map.entry("groupZone", "America/Chicago"),
                        Map.entry("groupTemperature", "F"),
                        Map.entry("groupLength", "in"),
                        Map.entry("groupCountry", "US"),
                        Map.entry("groupPostcode", "55806"),
                        Map.entry("groupSeason", "2027"),
                        Map.entry("name", "Ilse Brandt"),
                        Map.entry("postcode", "55803"),
                        Map.entry("passphrase", "three warm trays")));
        return browser;
    }

    /** Ends it as a power cut would, with no chance to tidy up (SIGKILL). */
    void kill() {
        process.destroyForcibly();
        ended();
    }

    /** Asks it to stop and waits until it has. */
    @Override
    public void close() {
        // By its handle, because destroying the process itself would also throw away what it still has to say.
        process.toHandle().destroy();
        ended();
    }

    private void ended() {
        try {
            if (!process.waitFor(30, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new AssertionError("it did not stop within half a minute");
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }
}
