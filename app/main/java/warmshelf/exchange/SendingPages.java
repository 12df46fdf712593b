package warmshelf.exchange;

import static warmshelf.exchange.ExchangeSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import warmshelf.frost.garden.ThermometerStore;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.SentFiles;
import warmshelf.web.Uploads;
import warmshelf.web.Visitor;

/** Sending a table, to be looked at. */
final class SendingPages implements Pages {
    private final IncomingJobs jobs;
    private final ThermometerStore thermometers;

    SendingPages(IncomingJobs jobs, ThermometerStore thermometers) {
        this.jobs = jobs;
        this.thermometers = thermometers;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(IncomingPages.ADDRESS + "/new/{kind}", this::blank, Role.MEMBER);
        routes.post(IncomingPages.ADDRESS, this::send, Role.MEMBER);
    }

    @Override
    public Set<String> uploads() {
        return Set.of(IncomingPages.ADDRESS);
    }

    /** @param mostMb size of the largest file taken */
    private record SendPage(IncomingForm form, int mostMb) {
        SendPage(IncomingForm form) {
            this(form, IncomingForm.MOST_MB);
        }
    }

    private void blank(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        IncomingKind kind = kind(ctx.pathParam("kind"), visitor);
        Respond.page(
                ctx,
                "exchange/send.peb",
                new SendPage(IncomingForm.blank(
                        kind,
                        thermometers.readableBy(visitor.memberId(), visitor.coordinator()),
                        visitor.coordinator())));
    }

    private static IncomingKind kind(String word, Visitor visitor) {
        IncomingKind kind = IncomingKind.named(word).orElseThrow(Refusal::notFound);
        if (kind.isForCoordinators() && !visitor.coordinator()) {
            throw Refusal.forbidden(SAY.coordinatorsInvite());
        }
        return kind;
    }

    private void send(Context ctx) throws IOException {
        Visitor visitor = Visitor.of(ctx);
        String word = ctx.formParam("kind");
        IncomingKind kind = IncomingKind.named(word == null ? "" : word)
                .map(known -> kind(known.word(), visitor))
                .orElseThrow(() -> Refusal.of(HttpStatus.UNPROCESSABLE_CONTENT, SAY.kindUnknown()));
        Path folder = Uploads.freshFolder(ctx);
        boolean handedOn = false;
        try {
            List<SentFiles.SentFile> sent = SentFiles.keep(ctx, folder, 1);
            IncomingForm form = IncomingForm.of(
                    ctx.formParamMap(),
                    kind,
                    thermometers.readableBy(visitor.memberId(), visitor.coordinator()),
                    visitor.coordinator(),
                    sent.isEmpty() ? null : Long.valueOf(Files.size(sent.get(0).path())));
            if (!form.ok()) {
                Respond.again(ctx, "exchange/send.peb", new SendPage(form));
                return;
            }
            IncomingJob job = jobs.start(order(form, sent.get(0), visitor), IncomingPages.PATIENCE);
            handedOn = true;
            Respond.seeOther(ctx, IncomingPages.ADDRESS + "/" + job.id(), SAY.arrived());
        } finally {
            if (!handedOn) {
                SentFiles.delete(folder);
            }
        }
    }

    private static IncomingOrder order(IncomingForm form, SentFiles.SentFile sent, Visitor visitor) throws IOException {
        return new IncomingOrder(
                form.getKind(),
                sent.path(),
                sent.name(),
                fingerprint(sent.path()),
                form.getKind() == IncomingKind.SOWINGS ? growers(visitor) : form.whose(),
                form.getKind() == IncomingKind.NIGHTS ? form.nightsOf().orElseThrow() : null,
                visitor.memberId(),
                visitor.today(),
                Math.max(visitor.season(), visitor.today().getYear()),
                visitor.units());
    }

    /** Coordinators bring in everybody's, others their own. */
    private static IncomingOrder.Whose growers(Visitor visitor) {
        return visitor.coordinator() ? IncomingOrder.Whose.COLUMN : IncomingOrder.Whose.MINE;
    }

    private static String fingerprint(Path file) throws IOException {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            try (InputStream stream = new DigestInputStream(Files.newInputStream(file), digest)) {
                stream.transferTo(java.io.OutputStream.nullOutputStream());
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException neverHappens) {
            throw new IllegalStateException("every Java has SHA-256", neverHappens);
        }
    }
}
