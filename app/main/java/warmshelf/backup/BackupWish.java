package warmshelf.backup;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A backup that a command wants of the server which has the data folder open: a file there that the server answers by another. Only
 * who may write to the folder can wish, and whoever may has the data anyway.
 */
final class BackupWish {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final String WANTED = "backup-wanted-";
    private static final String ANSWER = "backup-answer-";

    private final Path folder;
    private final String id;

    private BackupWish(Path folder, String id) {
        this.folder = folder;
        this.id = id;
    }

    /**
     * What the server answers.
     *
     * @param file the backup; null: there is none
     * @param trouble why there is none, by its code; null: there is one
     */
    record Answer(@Nullable String file, @Nullable String trouble) {}

    /** Leaves a wish. */
    static BackupWish leave(Path folder) throws IOException {
        BackupWish wish = new BackupWish(folder, UUID.randomUUID().toString());
        Files.createFile(wish.wanted());
        return wish;
    }

    /** The wishes in a folder that no server has taken up yet. */
    static List<BackupWish> in(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> name.startsWith(WANTED))
                    .map(name -> new BackupWish(folder, name.substring(WANTED.length())))
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    boolean isTaken() {
        return !Files.exists(wanted());
    }

    /** Taken up, or given up. */
    void take() throws IOException {
        Files.deleteIfExists(wanted());
    }

    void answer(Answer answer) throws IOException {
        Path fresh = folder.resolve(ANSWER + id + ".new");
        Files.write(fresh, JSON.writeValueAsBytes(answer));
        Files.move(fresh, answered(), StandardCopyOption.ATOMIC_MOVE);
    }

    /** The answer, once there is one; it is gone from the folder afterwards. */
    Optional<Answer> answer() throws IOException {
        if (!Files.exists(answered())) {
            return Optional.empty();
        }
        Answer answer = JSON.readValue(Files.readAllBytes(answered()), Answer.class);
        Files.delete(answered());
        return Optional.of(answer);
    }

    private Path wanted() {
        return folder.resolve(WANTED + id);
    }

    private Path answered() {
        return folder.resolve(ANSWER + id);
    }
}
