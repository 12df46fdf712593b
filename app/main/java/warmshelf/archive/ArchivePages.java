package warmshelf.archive;

import static warmshelf.archive.ArchiveSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Uploads;
import warmshelf.web.Visitor;
import warmshelf.words.Numbers;

/**
 * The whole group as one file, for coordinators. It is written beside first, so that what goes wrong is said on a page instead
 * of by half a file, a browser sees whether it has got all of it, and a slow phone does not hold the database.
 */
public final class ArchivePages implements Pages {
    private static final String WAIT_SECONDS = "60";

    private final ArchiveStore store;
    private final Semaphore free = new Semaphore(1);

    public ArchivePages(ArchiveStore store) {
        this.store = store;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/archive", this::show, Role.COORDINATOR);
        routes.get("/archive/everything.zip", this::download, Role.COORDINATOR);
    }

    private void show(Context ctx) {
        ZoneId zone = Visitor.of(ctx).zone();
        ArchiveNote made = store.last(ArchiveNote.Kind.MADE).orElse(null);
        ArchiveNote takenIn = store.last(ArchiveNote.Kind.TAKEN_IN).orElse(null);
        Respond.page(
                ctx,
                "archive/show.peb",
                new ArchivePage(
                        store.tally(),
                        made,
                        day(made, zone),
                        made == null ? null : Numbers.oneDecimal(Math.max(made.bytes() / 1e6, 0.1)),
                        day(takenIn, zone)));
    }

    private static @Nullable LocalDate day(@Nullable ArchiveNote note, ZoneId zone) {
        return note == null ? null : note.at().atZoneSameInstant(zone).toLocalDate();
    }

    private void download(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        ctx.contentType("application/zip")
                .header("Content-Disposition", "attachment; filename=\"%s\"".formatted(fileName(visitor)));
        if (ctx.method().equals(HandlerType.HEAD)) {
            return;
        }
        Path folder = null;
        try {
            folder = Uploads.freshFolder(ctx);
            Path file = folder.resolve("everything.zip");
            make(ctx, file, visitor);
            send(ctx, file);
        } catch (IOException noFolder) {
            throw noRoom(ctx);
        } finally {
            delete(folder);
        }
    }

    private void make(Context ctx, Path file, Visitor visitor) {
        if (!free.tryAcquire()) {
            ctx.header("Retry-After", WAIT_SECONDS);
            throw refused(ctx, SAY.beingMade());
        }
        try (OutputStream out = Files.newOutputStream(file)) {
            store.make(visitor.groupName(), out, visitor.memberId());
        } catch (IOException | UncheckedIOException unwritable) {
            throw noRoom(ctx);
        } finally {
            free.release();
        }
    }

    private static void send(Context ctx, Path file) {
        try {
            ctx.header("Content-Length", String.valueOf(Files.size(file)));
            Files.copy(file, ctx.outputStream());
        } catch (IOException gone) {
            throw new UncheckedIOException("the file could not be sent", gone);
        }
    }

    private static Refusal noRoom(Context ctx) {
        return refused(ctx, SAY.noRoom());
    }

    private static Refusal refused(Context ctx, String sentence) {
        // a page is shown instead of the file
        ctx.removeHeader("Content-Disposition");
        return Refusal.of(HttpStatus.SERVICE_UNAVAILABLE, sentence);
    }

    private static void delete(@Nullable Path folder) {
        if (folder != null) {
            try {
                Files.deleteIfExists(folder.resolve("everything.zip"));
                Files.deleteIfExists(folder);
            } catch (IOException stillThere) {
                // the folder of uploads is cleared when the server stops, or starts again
                return;
            }
        }
    }

    /** Plain letters and digits, which every system takes. */
    private static String fileName(Visitor visitor) {
        String plain = Normalizer.normalize(visitor.groupName(), Normalizer.Form.NFD)
                .replaceAll("[^A-Za-z0-9]+", "-")
                .replaceAll("^-|-$", "")
                .toLowerCase(Locale.ROOT);
        return "warmshelf-%s-%s.zip".formatted(plain.isEmpty() ? "group" : plain, visitor.today());
    }
}
