package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;
import warmshelf.Given;
import warmshelf.frost.minima.TextLines;

/** Tells by its first line what a file is, before anything of it is read. */
public final class FileRecognition {
    private String name = "";
    private @Nullable String text;

    private FileRecognition() {}

    /**
     * The kind of the files that were sent, and whether the place of their station must be typed.
     *
     * @param placeMissing only GHCN-Daily's table with a heading tells where its station lies
     */
    public record Told(ImportKind kind, boolean placeMissing) {}

    /**
     * Looks at the first line.
     *
     * @param chosen what its owner says it is; null: tell it
     * @throws BadInput when it is none that can be read, or another than chosen
     */
    public static Told tell(List<UploadedFile> files, @Nullable ImportKind chosen) throws IOException {
        FileRecognition first = new FileRecognition();
        new UploadedTexts((bytes, rows) -> {}).each(files, first::look);
        String line = first.text;
        if (line == null) {
            throw new BadInput(SAY.emptyFile());
        }
        ImportKind told = ImportKind.of(plain(first.name, line))
                .orElseThrow(() -> new BadInput(SAY.unknownFile(first.name, Given.shown(line), accepted(chosen))));
        if (chosen != null && chosen != told) {
            throw new BadInput(SAY.otherKind(chosen.words(), first.name, told.words()));
        }
        return new Told(
                told,
                told == ImportKind.NIGHTS
                        && !line.toUpperCase(java.util.Locale.ROOT).contains("LATITUDE"));
    }

    private boolean look(String documentName, InputStream stream) throws IOException {
        TextLines lines = new TextLines(
                new InputStreamReader(stream, StandardCharsets.UTF_8), ImportReader.LONGEST_LINE, SAY.fileToRead());
        for (String line = lines.next(); line != null; line = lines.next()) {
            if (!line.isBlank()) {
                name = documentName;
                text = line;
                return false;
            }
        }
        return true;
    }

    /**
     * A first line without the mark that some programs begin a text with.
     *
     * @throws BadInput when it is no line of a table at all
     */
    static String plain(String file, String line) {
        String start = line.replace("\uFEFF", "");
        String name = file.isEmpty() ? SAY.theFile() : SAY.named(file);
        if (start.stripLeading().startsWith("<")) {
            throw new BadInput(SAY.webPage(name, Given.shown(start)));
        }
        if (start.startsWith("PK")
                || start.chars().anyMatch(c -> c == 0xFFFD || (Character.isISOControl(c) && c != '\t'))) {
            throw new BadInput(SAY.noText(name));
        }
        return start;
    }

    private static String accepted(@Nullable ImportKind chosen) {
        return SAY.accepted(Arrays.stream(ImportKind.values())
                .filter(kind -> chosen == null || kind == chosen)
                .map(ImportKind::accepted)
                .collect(Collectors.joining("; ")));
    }
}
