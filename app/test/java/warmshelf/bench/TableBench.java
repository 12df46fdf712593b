package warmshelf.bench;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.locks.LockSupport;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;
import warmshelf.testing.Upload;

/** Brings 20,000 lots in as a table and takes them out again, by the whole program; run it with a small heap, such as -Xmx128m. */
public final class TableBench {
    private static final int ROWS = 20_000;
    private static final long BETWEEN_LOOKS_NANOS = 100_000_000;

    private TableBench() {}

    public static void main(String[] arguments) throws IOException {
        Path file = lots(Files.createTempFile("lots", ".csv"));
        try (TestGroup group = TestGroup.open()) {
            Browser ilse = group.signedIn(group.coordinator());
            long from = System.nanoTime();
            Answer sent = new Upload()
                    .field("kind", "lots")
                    .field("whose", "group")
                    .file("lots.csv", Files.readAllBytes(file))
                    .post(ilse, "/files/incoming");
            String address = Objects.requireNonNull(sent.location());
            until(ilse, address, from, "looked at");
            from = System.nanoTime();
            ilse.post(address + "/taking", Map.of());
            until(ilse, address, from, "taken in");
            from = System.nanoTime();
            int length = ilse.get("/files/tables/lots.csv").body().length();
            tell(from, "taken out, %,d characters".formatted(length));
        } finally {
            Files.delete(file);
        }
    }

    private static Path lots(Path file) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write("crop,variety,year,seeds_left,source,storage,tests,note\n");
            for (int i = 0; i < ROWS; i++) {
                out.write(String.format(
                        Locale.ROOT,
                        "pepper,Variety %d,%d,%d,saved,fridge,%s,\"a note, with a comma\"\n",
                        i,
                        2015 + i % 12,
                        i % 500,
                        i % 4 == 0 ? "2027-02-01 8/10" : ""));
            }
        }
        return file;
    }

    private static void until(Browser browser, String address, long from, String done) {
        while (browser.getJson(address).body().contains("\"busy\":true")) {
            LockSupport.parkNanos(BETWEEN_LOOKS_NANOS);
        }
        String page = browser.get(address).text();
        if (!page.contains(String.format(Locale.ROOT, "%,d rows", ROWS))) {
            throw new IllegalStateException(page);
        }
        tell(from, done);
    }

    private static double processorSeconds() {
        return ProcessHandle.current().info().totalCpuDuration().orElseThrow().toMillis() / 1000.0;
    }

    private static void tell(long from, String done) {
        Runtime machine = Runtime.getRuntime();
        System.gc();
        System.out.printf(
                Locale.ROOT,
                "%,d lots %s in %.1f s; %.1f s of the processor so far; heap in use afterwards %,d MiB of at most %,d MiB%n",
                ROWS,
                done,
                (System.nanoTime() - from) / 1e9,
                processorSeconds(),
                (machine.totalMemory() - machine.freeMemory()) / 1_048_576,
                machine.maxMemory() / 1_048_576);
    }
}
