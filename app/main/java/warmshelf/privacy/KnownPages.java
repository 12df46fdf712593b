package warmshelf.privacy;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import warmshelf.reminder.push.MessageLife;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** What is known of the person who asks, to read and to take along. Nobody is shown another's. */
final class KnownPages implements Pages {
    private final KnownStore store;
    private final Clock clock;

    KnownPages(KnownStore store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/settings/known", this::show, Role.MEMBER);
        routes.get("/settings/known.zip", this::download, Role.MEMBER);
    }

    /**
     * @param total how many rows of all matters
     * @param photos how many photos of theirs are kept
     * @param messageDays for how long letters are kept
     */
    private record KnownPage(List<KnownWords.Matter> matters, int total, int photos, long messageDays) {}

    private void show(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        List<KnownWords.Matter> matters = KnownWords.byMatter(store.of(visitor.memberId()), visitor.zone());
        Respond.page(
                ctx,
                "privacy/known.peb",
                new KnownPage(
                        matters,
                        matters.stream().mapToInt(KnownWords.Matter::total).sum(),
                        store.photos(visitor.memberId()).size(),
                        MessageLife.KEPT.toDays()));
    }

    private void download(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        ctx.contentType("application/zip")
                .header(
                        "Content-Disposition",
                        "attachment; filename=\"warmshelf-known-of-me-%s.zip\"".formatted(visitor.today()));
        if (ctx.method().equals(HandlerType.HEAD)) {
            return;
        }
        // all is read before the first byte is sent but the photos, of which one is in memory at a time
        List<KnownTable> tables = store.of(visitor.memberId());
        List<UUID> photos = store.photos(visitor.memberId());
        try (OutputStream out = new BufferedOutputStream(ctx.outputStream())) {
            KnownFile.write(out, clock.instant(), tables, photos, store::jpeg);
        } catch (IOException gone) {
            throw new UncheckedIOException("the file could not be sent", gone);
        }
    }
}
