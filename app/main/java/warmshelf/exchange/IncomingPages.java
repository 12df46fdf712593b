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
import java.time.Duration;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import warmshelf.frost.garden.Thermometer;
import warmshelf.frost.garden.ThermometerStore;
import warmshelf.web.BrowserSession;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.SentFiles;
import warmshelf.web.Uploads;
import warmshelf.web.Visitor;

/** Sending a table, seeing what is in it, and taking it in. What somebody sends is theirs alone until then. */
final class IncomingPages implements Pages {
    private static final String ADDRESS = "/files/incoming";
    private static final Duration PATIENCE = Duration.ofMillis(700);
    private static final int SECONDS_BETWEEN_LOOKS = 2;

    private final IncomingJobs jobs;
    private final IncomingLogStore log;
    private final ThermometerStore thermometers;
    private final BrowserSession browsers;

    IncomingPages(IncomingJobs jobs, IncomingLogStore log, ThermometerStore thermometers, BrowserSession browsers) {
        this.jobs = jobs;
        this.log = log;
        this.thermometers = thermometers;
        this.browsers = browsers;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(ADDRESS + "/new/{kind}", this::blank, Role.MEMBER);
        routes.post(ADDRESS, this::send, Role.MEMBER);
        routes.get(ADDRESS + "/{id}", this::show, Role.MEMBER);
        routes.post(ADDRESS + "/{id}/taking", this::take, Role.MEMBER);
        routes.post(ADDRESS + "/{id}/cancellation", this::giveUp, Role.MEMBER);
    }

    @Override
    public Set<String> uploads() {
        return Set.of(ADDRESS);
    }

    @Override
    public void stop() {
        jobs.close();
    }

    /** @param mostMb size of the largest file taken */
    private record SendPage(IncomingForm form, int mostMb) {
        SendPage(IncomingForm form) {
            this(form, IncomingForm.MOST_MB);
        }
    }

    /** @param seconds between two looks at how far the reading is */
    private record ShownPage(IncomingPage page, int seconds, Map<String, String> problems) {}

    private void blank(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        IncomingKind kind = kind(ctx.pathParam("kind"), visitor);
        Respond.page(
                ctx,
                "exchange/send.peb",
                new SendPage(IncomingForm.blank(kind, readable(visitor), visitor.coordinator())));
    }

    private static IncomingKind kind(String word, Visitor visitor) {
        IncomingKind kind = IncomingKind.named(word).orElseThrow(Refusal::notFound);
        if (kind.isForCoordinators() && !visitor.coordinator()) {
            throw Refusal.forbidden(SAY.coordinatorsInvite());
        }
        return kind;
    }

    private List<Thermometer> readable(Visitor visitor) {
        return thermometers.seenBy(visitor.memberId(), visitor.coordinator()).stream()
                .filter(each -> !each.retired())
                .toList();
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
                    readable(visitor),
                    visitor.coordinator(),
                    sent.isEmpty() ? null : Long.valueOf(Files.size(sent.get(0).path())));
            if (!form.ok()) {
                Respond.again(ctx, "exchange/send.peb", new SendPage(form));
                return;
            }
            IncomingJob job = jobs.start(order(form, sent.get(0), visitor), PATIENCE);
            handedOn = true;
            Respond.seeOther(ctx, ADDRESS + "/" + job.id(), SAY.arrived());
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
                form.whose(),
                form.getKind() == IncomingKind.NIGHTS ? form.nightsOf().orElseThrow() : null,
                visitor.memberId(),
                visitor.today(),
                Math.max(visitor.season(), visitor.today().getYear()),
                visitor.units());
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

    private void show(Context ctx) {
        IncomingJob job = found(ctx);
        IncomingPage page = page(ctx, job);
        if (Respond.wantsJson(ctx)) {
            ctx.json(Map.of("busy", page.state().isBusy(), "percent", page.percent(), "words", page.words()));
            return;
        }
        Respond.page(ctx, "exchange/incoming.peb", new ShownPage(page, SECONDS_BETWEEN_LOOKS, Map.of()));
    }

    private IncomingPage page(Context ctx, IncomingJob job) {
        return IncomingPage.of(
                job,
                log.before(job.order(), Visitor.of(ctx).zone()).orElse(null),
                path -> browsers.wholeAddress(ctx, path));
    }

    /** What a stop of the program took away is told by the log, in which exactly that stands which was taken in. */
    private IncomingJob found(Context ctx) {
        UUID id = Respond.id(ctx, "id");
        Visitor visitor = Visitor.of(ctx);
        return jobs.find(id)
                .filter(job -> job.order().by().equals(visitor.memberId()))
                .orElseThrow(() -> log.find(id, visitor.zone())
                        .filter(taken -> taken.memberId().equals(visitor.memberId()))
                        .map(taken -> Refusal.gone(SAY.takenAndForgotten(taken.fileName(), taken.rows(), taken.on())))
                        .orElseGet(() -> Refusal.notFound(SAY.notHereAnyMore())));
    }

    private void take(Context ctx) {
        IncomingJob job = found(ctx);
        IncomingPage page = page(ctx, job);
        if (page.isDoubtful() && ctx.formParam("sure") == null) {
            Respond.again(
                    ctx,
                    "exchange/incoming.peb",
                    new ShownPage(page, SECONDS_BETWEEN_LOOKS, Map.of("sure", SAY.sayThatYouAreSure())));
            return;
        }
        if (page.state() == IncomingState.READY && !page.isFit()) {
            throw Refusal.conflict(SAY.notFit());
        }
        if (!jobs.take(job, PATIENCE) && !isTakenIn(job)) {
            throw Refusal.conflict(SAY.decidedBefore(page.words()));
        }
        Respond.seeOther(ctx, ADDRESS + "/" + job.id(), SAY.takingBegan());
    }

    /** Pressed twice it is taken in once, and both presses lead to the same page. */
    private static boolean isTakenIn(IncomingJob job) {
        IncomingState state = job.standing().state();
        return state == IncomingState.TAKING || state == IncomingState.TAKEN;
    }

    private void giveUp(Context ctx) {
        IncomingJob job = found(ctx);
        if (!jobs.giveUp(job)) {
            throw Refusal.conflict(SAY.decidedBefore(page(ctx, job).words()));
        }
        Respond.seeOther(ctx, "/files", SAY.givenUp());
    }
}
