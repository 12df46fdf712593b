package warmshelf.jar;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** One run of the packaged jar from start to end, with what it printed. */
record JarRun(int status, String out, String err) {
    // More than one object, or anything after it, is a mistake.
    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    static JarRun of(String... words) {
        return by(List.of(), words);
    }

    /** The same by a Java that is told something besides. */
    static JarRun by(List<String> java, String... words) {
        try {
            Path out = Files.createTempFile("warmshelf-out", ".txt");
            Path err = Files.createTempFile("warmshelf-err", ".txt");
            ProcessBuilder builder = command(List.of(words));
            builder.command().addAll(1, java);
            Process process = builder.redirectOutput(out.toFile())
                    .redirectError(err.toFile())
                    .start();
            if (!process.waitFor(3, TimeUnit.MINUTES)) {
                process.destroyForcibly();
                throw new AssertionError("did not end within three minutes: " + String.join(" ", words));
            }
            JarRun run = new JarRun(process.exitValue(), read(out), read(err));
            Files.delete(out);
            Files.delete(err);
            return run;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }

    /** The jar as a person starts it, without the settings that this test's own environment may hold. */
    static ProcessBuilder command(List<String> words) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx256m",
                // quick to start rather than quick in the long run
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC"));
        command.addAll(program());
        command.addAll(words);
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().keySet().removeIf(name -> name.startsWith("WARMSHELF_"));
        return builder;
    }

    /** Where there is no jar, as while working on one test, the classes that this test runs with. */
    private static List<String> program() {
        String jar = System.getProperty("warmshelf.jar", "target/warmshelf.jar");
        return Boolean.getBoolean("warmshelf.classes")
                ? List.of("-cp", System.getProperty("java.class.path"), "warmshelf.App")
                : List.of("-jar", jar);
    }

    JsonNode json() {
        try {
            return JSON.readTree(out);
        } catch (JsonProcessingException notJson) {
            throw new AssertionError("not one JSON object: " + out, notJson);
        }
    }

    private static String read(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }
}
