package warmshelf.backup;

import static warmshelf.backup.BackupSentences.SAY;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import warmshelf.BadInput;
import warmshelf.DatabaseOptions;
import warmshelf.Output;
import warmshelf.Upkeep;

/** {@code backup}: makes a backup of a data folder, through the server where one has it open. */
@Command(
        name = "backup",
        description =
                "Make a backup of a data folder now, whether a server runs on it or not. The copy is opened, read whole"
                        + " and counted before it gets its name. With PostgreSQL use that database's own tools, such as pg_dump.",
        footerHeading = "%n",
        footer = {
            "Prints file, bytes, group, version, changes, lastChangeAt and rows, the number of rows of each table.",
            "A backup holds names, postcodes, photos and hashes of passphrases: keep it locked away."
        },
        mixinStandardHelpOptions = true)
public final class BackupCommand implements Callable<Integer> {
    private static final int LOOK_AGAIN_MS = 200;
    private static final int TAKEN_UP_WITHIN_MS = 30_000;
    private static final int ANSWERED_WITHIN_MS = 3_600_000;

    @Mixin
    private DatabaseOptions options;

    @Option(
            names = "--out",
            paramLabel = "FILE|FOLDER",
            description = "The zip to write, not there yet, or a folder for it (default 'backups' in the data folder; a"
                    + " server also keeps its own there).")
    private @Nullable Path out;

    @Override
    public Integer call() throws IOException, InterruptedException {
        Path data = folder();
        if (out != null && Files.exists(out) && !Files.isDirectory(out)) {
            throw new BadInput(SAY.outExists(out.toString()));
        }
        try {
            Optional<ClosedData> closed = ClosedData.in(data);
            Output.json(answer(closed.isPresent() ? madeOf(closed.get(), data) : throughServer(data)));
        } catch (BackupTrouble trouble) {
            throw new BadInput(BackupNews.reason(trouble.reason()));
        }
        return 0;
    }

    private Path folder() {
        Path data = options.read(System.getenv()).folder();
        if (data == null) {
            throw new BadInput(SAY.ofPostgres());
        }
        if (!ClosedData.hasData(data)) {
            throw new BadInput(SAY.noData(data.toString()));
        }
        return data;
    }

    /** In a folder of its own first, so that nothing half made ever has the name that was asked for. */
    private Path madeOf(ClosedData source, Path data) throws IOException {
        try (source) {
            Path target = out;
            if (target == null || Files.isDirectory(target)) {
                Path folder = target == null ? Upkeep.NONE.backupsOf(data) : target;
                return maker(source, folder).make().file();
            }
            Path parent = parent(target);
            Path beside = Files.createTempDirectory(parent, "backup-");
            try {
                Files.move(maker(source, beside).make().file(), target);
                return target;
            } catch (FileAlreadyExistsException cameMeanwhile) {
                throw new BadInput(SAY.outExists(target.toString()));
            } finally {
                Files.deleteIfExists(beside);
            }
        }
    }

    private static Path parent(Path file) {
        Path parent = file.toAbsolutePath().getParent();
        if (parent == null || !Files.isDirectory(parent)) {
            throw new BadInput(SAY.outUnwritable(file.toString()));
        }
        return parent;
    }

    private static BackupMaker maker(BackupSource source, Path folder) {
        return new BackupMaker(source, new BackupFolder(folder), Clock.systemUTC());
    }

    private Path throughServer(Path data) throws IOException, InterruptedException {
        BackupWish wish = BackupWish.leave(data);
        BackupWish.Answer answer = waitFor(wish);
        if (answer.file() == null) {
            throw new BackupTrouble(BackupTrouble.Reason.named(String.valueOf(answer.trouble())));
        }
        Path made = Path.of(answer.file());
        if (out == null) {
            return made;
        }
        Path target = Files.isDirectory(out) ? out.resolve(String.valueOf(made.getFileName())) : out;
        Path part = Files.createTempFile(parent(target), "warmshelf-", ".part");
        try {
            Files.delete(part);
            Files.copy(made, part);
            Files.move(part, target);
            return target;
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static BackupWish.Answer waitFor(BackupWish wish) throws IOException, InterruptedException {
        try {
            for (int waited = 0; waited < ANSWERED_WITHIN_MS; waited += LOOK_AGAIN_MS) {
                Optional<BackupWish.Answer> answer = wish.answer();
                if (answer.isPresent()) {
                    return answer.get();
                }
                if (waited > TAKEN_UP_WITHIN_MS && !wish.isTaken()) {
                    throw new BadInput(SAY.serverSilent());
                }
                Thread.sleep(LOOK_AGAIN_MS);
            }
            throw new BadInput(SAY.serverSilent());
        } finally {
            wish.take();
        }
    }

    private static Map<String, Object> answer(Path file) throws IOException {
        BackupManifest manifest = BackupFile.manifest(file);
        Map<String, @Nullable Object> answer = new LinkedHashMap<>();
        answer.put("file", file.toAbsolutePath().toString());
        answer.put("bytes", Files.size(file));
        answer.put("group", manifest.group());
        answer.put("version", manifest.version());
        answer.put("changes", manifest.changes());
        answer.put("lastChangeAt", manifest.lastChangeAt());
        answer.put("rows", manifest.rows());
        return answer;
    }
}
