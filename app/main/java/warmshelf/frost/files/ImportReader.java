package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;
import warmshelf.frost.minima.MinimaFile;
import warmshelf.frost.minima.StationMinima;
import warmshelf.frost.minima.TextLines;

/** Reads the files of one import from the first line to the last, holding one line at a time (of nights, two bytes a day). */
public final class ImportReader {
    /** The widest by-station normals have some thousand columns with three flags each. */
    static final int LONGEST_LINE = 400_000;

    private ImportReader() {}

    /**
     * What to read.
     *
     * @param place where a station of nights lies, where it was typed in
     * @param stationName what to call a station of nights; empty: as the file does
     * @param folder for parts of what was read
     */
    public record Order(
            ImportKind kind,
            List<UploadedFile> files,
            @Nullable TypedPlace place,
            String stationName,
            Path folder) {}

    /**
     * Reads all.
     *
     * @throws BadInput when the whole of it is refused, with sentences that say why
     * @throws ReadingCancelled when the watch says so
     */
    public static void read(Order order, ImportedRows findings, ReadingProgress watch) throws IOException {
        UploadedTexts documents = new UploadedTexts(watch);
        switch (order.kind()) {
            case NIGHTS -> nights(order, documents, findings);
            case STATIONS -> rows(order, documents, new PublishedStations(findings), findings);
            case NORMALS -> rows(order, documents, new NormalsFile(findings), findings);
            case POSTCODES -> {
                try (PostcodeFile postcodes = new PostcodeFile(findings, order.folder())) {
                    rows(order, documents, postcodes, findings);
                }
            }
        }
        watch.at(documents.bytes(), documents.rows());
    }

    private static void nights(Order order, UploadedTexts documents, ImportedRows findings) throws IOException {
        documents.each(order.files(), new UploadedTexts.Reader() {
            private boolean any;

            @Override
            public boolean read(String name, InputStream text) throws IOException {
                if (any) {
                    throw new BadInput(SAY.secondFile(name));
                }
                any = true;
                StationMinima station = MinimaFile.read(text, name, null);
                findings.station(NightsStation.read(station, order.place(), order.stationName(), findings));
                return true;
            }
        });
    }

    private static void rows(Order order, UploadedTexts documents, RowReader reader, ImportedRows findings)
            throws IOException {
        RowReading course = new RowReading(reader, findings);
        boolean several = order.files().size() > 1
                || order.files().stream().anyMatch(file -> file.name().endsWith(".zip"));
        try {
            documents.each(order.files(), (name, text) -> {
                course.read(
                        several ? name : "",
                        new TextLines(
                                new InputStreamReader(text, StandardCharsets.UTF_8),
                                LONGEST_LINE,
                                SAY.fileOf(order.kind().words())));
                return true;
            });
        } catch (FileRefused refused) {
            throw new BadInput(String.valueOf(refused.getMessage()));
        }
        reader.end();
    }
}
