package warmshelf.bench;

import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A server in a process of its own with a heap of 256 MiB, as a small rented machine would run it. */
final class BenchProcess implements AutoCloseable {
    private static final Duration LONGEST_START = Duration.ofMinutes(3);

    private final Process process;
    private final int port;
    private final Duration start;

    private BenchProcess(Process process, int port, Duration start) {
        this.process = process;
        this.port = port;
        this.start = start;
    }

    /** The application on a data folder, up when its sign-in page answers. */
    static BenchProcess application(Path data) throws IOException, InterruptedException {
        int port = freePort();
        return start(
                port, "/sign-in", "warmshelf.App", "serve", "--port", String.valueOf(port), "--data", data.toString());
    }

    /** The application on a PostgreSQL database, one of several behind a proxy on this machine. */
    static BenchProcess node(int port, String jdbcUrl, String baseUrl) throws IOException, InterruptedException {
        return start(
                port,
                "/health",
                "warmshelf.App",
                "serve",
                "--port",
                String.valueOf(port),
                "--jdbc-url",
                jdbcUrl,
                "--base-url",
                baseUrl,
                "--trusted-proxies",
                "127.0.0.1");
    }

    /** A server of the same make that does nothing but answer with the file. */
    static BenchProcess bare(Path page) throws IOException, InterruptedException {
        int port = freePort();
        return start(port, "/constant", BareServer.class.getName(), String.valueOf(port), page.toString());
    }

    private static BenchProcess start(int port, String firstPage, String... words)
            throws IOException, InterruptedException {
        List<String> command =
                new ArrayList<>(List.of(tool("java"), "-Xmx256m", "-cp", System.getProperty("java.class.path")));
        command.addAll(List.of(words));
        long begun = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        while (!answers(port, firstPage)) {
            if (!process.isAlive() || System.nanoTime() - begun > LONGEST_START.toNanos()) {
                process.destroyForcibly();
                throw new IOException("did not start: " + String.join(" ", words));
            }
            TimeUnit.MILLISECONDS.sleep(5);
        }
        return new BenchProcess(process, port, Duration.ofNanos(System.nanoTime() - begun));
    }

    private static boolean answers(int port, String path) throws IOException {
        try (Wire wire = new Wire(port)) {
            return wire.get(new Load.Ask(path, "", true)).status() == 200;
        } catch (ConnectException notYet) {
            return false;
        }
    }

    int port() {
        return port;
    }

    /** From the start of the process to the whole first page. */
    Duration startTime() {
        return start;
    }

    Duration processorTime() {
        return process.info().totalCpuDuration().orElse(Duration.ZERO);
    }

    /** Memory the system has given it, MiB; 0 where the system does not tell. */
    long residentMiB() throws IOException {
        Path status = Path.of("/proc", String.valueOf(process.pid()), "status");
        if (!Files.exists(status)) {
            return 0;
        }
        try (var lines = Files.lines(status)) {
            return lines.filter(line -> line.startsWith("VmRSS:"))
                    .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")) / 1024)
                    .findFirst()
                    .orElse(0);
        }
    }

    /** Heap in use once what nobody needs has been collected, MiB. */
    double liveHeapMiB() throws IOException {
        Process histogram = new ProcessBuilder(tool("jcmd"), String.valueOf(process.pid()), "GC.class_histogram")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String text = new String(histogram.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return text.lines()
                .filter(line -> line.startsWith("Total"))
                .mapToDouble(line -> Long.parseLong(line.strip().split("\\s+", -1)[2]) / 1048576.0)
                .findFirst()
                .orElse(Double.NaN);
    }

    /** Ends it as a power cut would. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    @Override
    public void close() throws IOException {
        process.destroy();
        try {
            if (!process.waitFor(20, TimeUnit.SECONDS)) {
                process.destroyForcibly();
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private static String tool(String name) {
        return Path.of(System.getProperty("java.home"), "bin", name).toString();
    }

    static int freePort() throws IOException {
        try (ServerSocket any = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return any.getLocalPort();
        }
    }
}
