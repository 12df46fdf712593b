package warmshelf.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The files of a form, kept beyond its answer. */
public final class SentFiles {
    private static final String FIELD = "file";
    private static final int LONGEST_NAME = 200;

    private SentFiles() {}

    /**
     * A file as it was sent.
     *
     * @param path where it lies meanwhile
     * @param name what its owner calls it, without folders
     */
    public record SentFile(Path path, String name) {}

    /**
     * Keeps them in a folder under other names, as the server throws away what was sent when it has answered.
     *
     * @throws Refusal when there are more than so many
     */
    public static List<SentFile> keep(Context ctx, Path folder, int most) throws IOException {
        List<SentFile> kept = new ArrayList<>();
        if (!ctx.isMultipartFormData()) {
            return kept;
        }
        for (UploadedFile sent : ctx.uploadedFiles(FIELD)) {
            // a browser sends a nameless file where none was chosen
            if (sent.filename().isBlank()) {
                continue;
            }
            if (kept.size() == most) {
                throw Refusal.of(HttpStatus.UNPROCESSABLE_CONTENT, WebSentences.SAY.tooManyFiles(most));
            }
            Path path = folder.resolve("file-" + kept.size());
            try (InputStream content = sent.content()) {
                Files.copy(content, path);
            }
            kept.add(new SentFile(path, name(sent.filename())));
        }
        return kept;
    }

    /** Deletes a folder with the files in it. */
    public static void delete(Path folder) {
        UploadFolder.delete(folder);
    }

    private static String name(String given) {
        String last = given.substring(Math.max(given.lastIndexOf('/'), given.lastIndexOf('\\')) + 1);
        String plain = last.replaceAll("\\p{Cntrl}", " ").strip();
        return plain.length() <= LONGEST_NAME ? plain : plain.substring(0, LONGEST_NAME);
    }
}
