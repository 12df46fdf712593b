package warmshelf.frost.minima;

import static warmshelf.frost.minima.MinimaSentences.SAY;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.zip.GZIPInputStream;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;
import warmshelf.Given;

/** Reads a file of daily minima from its first line to its last, holding two bytes a day and one line at a time. */
public final class MinimaFile {
    private static final byte[] GZIP = {(byte) 0x1f, (byte) 0x8b};

    private static final int LONGEST_LINE = 20_000;

    private MinimaFile() {}

    /**
     * Reads a file; it may be packed with gzip, as the service's own are.
     *
     * @param layout null to tell it by the first line
     * @throws BadInput when the file cannot be used, naming the lines; then nothing of it is taken
     */
    public static StationMinima read(Path file, @Nullable MinimaLayout layout) {
        if (!Files.isRegularFile(file)) {
            throw new BadInput(SAY.noFile(file.toString()));
        }
        try (InputStream stream = unpacked(new BufferedInputStream(Files.newInputStream(file)))) {
            return read(stream, String.valueOf(file.getFileName()), layout);
        } catch (IOException unreadable) {
            throw new BadInput(SAY.unreadable(file.toString(), String.valueOf(unreadable.getMessage())));
        }
    }

    private static InputStream unpacked(BufferedInputStream stream) throws IOException {
        stream.mark(GZIP.length);
        byte[] start = stream.readNBytes(GZIP.length);
        stream.reset();
        return Arrays.equals(start, GZIP) ? new GZIPInputStream(stream) : stream;
    }

    /**
     * Reads a stream of text; see {@link #read(Path, MinimaLayout)}. What the stream throws passes through, so that it can end
     * the reading.
     *
     * @param name what to call the station where the text does not name one
     */
    public static StationMinima read(InputStream stream, String name, @Nullable MinimaLayout layout)
            throws IOException {
        TextLines text =
                new TextLines(new InputStreamReader(stream, StandardCharsets.UTF_8), LONGEST_LINE, SAY.fileOfMinima());
        MinimaCollector gathering = new MinimaCollector();
        MinimaLines lines = null;
        int number = 0;
        for (String line = text.next(); line != null && !gathering.isHopeless(); line = text.next()) {
            number++;
            if (line.isBlank()) {
                continue;
            }
            if (lines == null) {
                lines = start(name, number, line.replace("\uFEFF", ""), layout, gathering);
            } else {
                lines.read(number, line);
            }
        }
        refuseProblems(name, gathering);
        return gathering.done(name);
    }

    private static MinimaLines start(
            String name, int number, String line, @Nullable MinimaLayout layout, MinimaCollector gathering) {
        refuseOtherKinds(name, number, line);
        Optional<MinimaLayout> found = layout == null ? MinimaLayout.of(line) : Optional.of(layout);
        MinimaLines lines = found.flatMap(one -> one.lines(line, gathering))
                .orElseThrow(() -> new BadInput(SAY.notMinima(name, number, Given.shown(line), accepted(layout))));
        if (MinimaLayout.isData(line)) {
            lines.read(number, line);
        }
        return lines;
    }

    private static void refuseOtherKinds(String name, int number, String line) {
        String start = line.stripLeading().toLowerCase(Locale.ROOT);
        if (start.startsWith("<")) {
            throw new BadInput(SAY.webPage(name, number, Given.shown(line)));
        }
        if (line.indexOf('\0') >= 0 || line.startsWith("PK")) {
            throw new BadInput(SAY.noText(name));
        }
    }

    private static String accepted(@Nullable MinimaLayout layout) {
        return Arrays.stream(MinimaLayout.values())
                .filter(one -> layout == null || one == layout)
                .map(MinimaLayout::words)
                .collect(Collectors.joining("; "));
    }

    private static void refuseProblems(String name, MinimaCollector gathering) {
        if (!gathering.problems().isEmpty()) {
            String problems = String.join("\n", gathering.problems());
            throw new BadInput(
                    SAY.refused(name, gathering.isHopeless() ? problems + "\n" + SAY.restNotRead() : problems));
        }
        if (gathering.minima.size() == 0) {
            throw new BadInput(SAY.noMinimum(name));
        }
    }
}
