package warmshelf.bench;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import warmshelf.frost.files.ImportKind;
import warmshelf.frost.files.ImportReader;
import warmshelf.frost.files.ImportedRows;
import warmshelf.frost.files.PostcodeRow;
import warmshelf.frost.files.StationReading;
import warmshelf.frost.files.TypedPlace;
import warmshelf.frost.files.UploadedFile;

/** Reads a large file of daily minima and one of postcodes; run it with a small heap, such as -Xmx64m. */
public final class IntakeBench {
    private static final int DAYS = 150_000;
    private static final int POSTCODES = 1_000_000;

    private IntakeBench() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createTempDirectory("intake-bench");
        measure(ImportKind.NIGHTS, nights(folder.resolve("nights.csv")), folder);
        measure(ImportKind.POSTCODES, postcodes(folder.resolve("postcodes.txt")), folder);
        Files.delete(folder);
    }

    private static void measure(ImportKind kind, Path file, Path folder) throws IOException {
        Counted counted = new Counted();
        long size = Files.size(file);
        long from = System.nanoTime();
        ImportReader.read(
                new ImportReader.Order(
                        kind, List.of(new UploadedFile(file, "bench")), new TypedPlace(46.8, -92.1, 180), "", folder),
                counted,
                (bytes, rows) -> {});
        System.out.printf(
                Locale.ROOT,
                "%s: %,d MB, %,d found in %.1f s with a heap of %,d MiB%n",
                kind.word(),
                size / 1_000_000,
                counted.found,
                (System.nanoTime() - from) / 1e9,
                Runtime.getRuntime().maxMemory() / 1_048_576);
        Files.delete(file);
    }

    private static Path nights(Path file) throws IOException {
        String filler = ",\"" + "some other element, ".repeat(19) + "\"\n";
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write("date,tmin,rest\n");
            LocalDate day = LocalDate.of(1720, 1, 1);
            for (int i = 0; i < DAYS; i++) {
                out.write(String.format(Locale.ROOT, "%s,%.1f%s", day, 10 - 20 * Math.cos(i / 58.09), filler));
                day = day.plusDays(1);
            }
        }
        return file;
    }

    private static Path postcodes(Path file) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            for (int i = 0; i < POSTCODES; i++) {
                out.write(String.format(
                        Locale.ROOT,
                        "GB\tAB%d %d\tPlace %d\tRegion\tRG\t\t\t\t\t57.1\t-2.2\t4\n",
                        i / 100,
                        i % 100,
                        i));
            }
        }
        return file;
    }

    private static final class Counted implements ImportedRows {
        private int found;

        @Override
        public void station(StationReading station) {
            found++;
        }

        @Override
        public void place(PostcodeRow place) {
            found++;
        }

        @Override
        public void problem(long line, String sentence) {
            throw new IllegalStateException(line + ": " + sentence);
        }

        @Override
        public void note(String sentence) {
            // notes are not measured
        }
    }
}
