package warmshelf.frost.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Keeps what is found in files, for tests. */
final class Found implements ImportedRows {
    final List<StationReading> stations = new ArrayList<>();
    final List<PostcodeRow> places = new ArrayList<>();
    final List<ImportProblem> problems = new ArrayList<>();
    final List<String> notes = new ArrayList<>();

    /** Reads one text. */
    static Found in(Path folder, ImportKind kind, String name, String text) {
        return in(folder, kind, null, file(folder, name, text.getBytes(StandardCharsets.UTF_8)));
    }

    static Found in(Path folder, ImportKind kind, @Nullable TypedPlace place, UploadedFile... files) {
        Found found = new Found();
        try {
            ImportReader.read(
                    new ImportReader.Order(kind, List.of(files), place, "", folder), found, (bytes, rows) -> {});
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return found;
    }

    static UploadedFile file(Path folder, String name, byte[] content) {
        try {
            return new UploadedFile(Files.write(folder.resolve(name), content), name);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    @Override
    public void station(StationReading station) {
        stations.add(station);
    }

    @Override
    public void place(PostcodeRow place) {
        places.add(place);
    }

    @Override
    public void problem(long line, String sentence) {
        problems.add(new ImportProblem(line, sentence));
    }

    @Override
    public void note(String sentence) {
        notes.add(sentence);
    }
}
