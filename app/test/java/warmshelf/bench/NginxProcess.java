package warmshelf.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** nginx with the settings that app/deploy offers, but for the ports, the name and the certificate. */
final class NginxProcess implements AutoCloseable {
    private static final Path SETTINGS = Path.of("app/deploy/nginx.conf");
    private static final Pattern UPSTREAM = Pattern.compile("(upstream warmshelf \\{)[^}]*}");
    private static final Pattern TO_HTTPS = Pattern.compile("server \\{[^}]*return 301[^}]*}");

    private final Process process;
    private final int port;
    private final List<Integer> programs;

    private NginxProcess(Process process, int port, List<Integer> programs) {
        this.process = process;
        this.port = port;
        this.programs = programs;
    }

    static NginxProcess inFrontOf(int count, Path folder) throws IOException, InterruptedException {
        int port = BenchProcess.freePort();
        List<Integer> programs =
                IntStream.range(0, count).mapToObj(each -> free()).toList();
        String servers = programs.stream()
                .map(each -> "server 127.0.0.1:%d max_fails=1 fail_timeout=5s;".formatted(each))
                .collect(Collectors.joining(" "));
        String site = UPSTREAM.matcher(Files.readString(SETTINGS)).replaceFirst("$1 " + servers + " }");
        site = TO_HTTPS.matcher(site)
                .replaceFirst("")
                .replace("listen 443 ssl http2;", "listen 127.0.0.1:%d;".formatted(port))
                .replace("seeds.example.org;", "localhost;")
                .replaceAll("ssl_certificate[^;]*;", "")
                .replace("$host;", "$http_host;");
        Path file = folder.resolve("nginx.conf");
        Files.writeString(
                file,
                "pid %s/pid; error_log stderr; events {} http { access_log off; client_body_temp_path %s; proxy_temp_path %s; %s }"
                        .formatted(folder, folder.resolve("body"), folder.resolve("proxy"), site));
        Process process = new ProcessBuilder(
                        "nginx", "-p", folder.toString(), "-c", file.toString(), "-g", "daemon off;")
                .inheritIO()
                .start();
        TimeUnit.SECONDS.sleep(1);
        if (!process.isAlive()) {
            throw new IOException("nginx did not start");
        }
        return new NginxProcess(process, port, programs);
    }

    private static int free() {
        try {
            return BenchProcess.freePort();
        } catch (IOException none) {
            throw new IllegalStateException(none);
        }
    }

    String address() {
        return "http://127.0.0.1:" + port;
    }

    List<Integer> programs() {
        return programs;
    }

    @Override
    public void close() {
        process.destroy();
    }
}
