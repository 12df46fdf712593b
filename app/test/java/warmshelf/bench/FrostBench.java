package warmshelf.bench;

import java.io.IOException;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Random;
import warmshelf.frost.minima.FrostRecord;
import warmshelf.frost.minima.MinimaFile;

/** How long a century of daily data takes: reads a GHCN-Daily file of five elements, as a station's own, ten times over. */
public final class FrostBench {
    private static final int RUNS = 10;

    private FrostBench() {}

    public static void main(String[] unused) throws IOException {
        Path file = Files.createTempFile("century", ".csv");
        try {
            write(file);
            System.out.printf("a century of daily data, %.1f MB%n", Files.size(file) / 1e6);
            ThreadMXBean threads = ManagementFactory.getThreadMXBean();
            for (int run = 1; run <= RUNS; run++) {
                long start = System.nanoTime();
                long busy = threads.getCurrentThreadCpuTime();
                FrostRecord record = FrostRecord.of(MinimaFile.read(file, null), null, 0);
                System.out.printf(
                        "run %2d: %.3f s by the clock, %.3f s of the processor, %d springs%n",
                        run,
                        (System.nanoTime() - start) / 1e9,
                        (threads.getCurrentThreadCpuTime() - busy) / 1e9,
                        record.spring().seasons().size());
            }
        } finally {
            Files.delete(file);
        }
    }

    private static void write(Path file) throws IOException {
        Random random = new Random(20270301);
        try (Writer writer = Files.newBufferedWriter(file)) {
            for (LocalDate day = LocalDate.of(1920, 1, 1); day.getYear() < 2020; day = day.plusDays(1)) {
                double wave = Math.cos(2 * Math.PI * (day.getDayOfYear() - 20) / 365.25);
                long minimum = Math.round(10 * (5 - 11 * wave + 4 * random.nextGaussian()));
                for (String element : new String[] {"TMAX", "TMIN", "PRCP", "SNOW", "SNWD"}) {
                    writer.write("USC00219999,%s,%s,%d,,,7,0700%n"
                            .formatted(day.format(DateTimeFormatter.BASIC_ISO_DATE), element, minimum));
                }
            }
        }
    }
}
