package warmshelf.exchange;

import static warmshelf.exchange.ExchangeSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.Map;
import java.util.UUID;
import warmshelf.frost.garden.ThermometerStore;
import warmshelf.web.BrowserSession;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** Seeing what is in a table that was sent, and taking it in. What somebody sends is theirs alone until then. */
final class IncomingPages implements Pages {
    static final String ADDRESS = "/files/incoming";
    static final Duration PATIENCE = Duration.ofMillis(700);
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
        routes.get(ADDRESS + "/{id}", this::show, Role.MEMBER);
        routes.post(ADDRESS + "/{id}/taking", this::take, Role.MEMBER);
        routes.post(ADDRESS + "/{id}/cancellation", this::giveUp, Role.MEMBER);
    }

    @Override
    public void stop() {
        jobs.close();
    }

    /** @param seconds between two looks at how far the reading is */
    private record ShownPage(IncomingPage page, int seconds, Map<String, String> problems) {}

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
        requireStillAllowed(job.order(), Visitor.of(ctx));
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

    /** What somebody may bring in can have changed since the file was looked at. */
    private void requireStillAllowed(IncomingOrder order, Visitor visitor) {
        boolean needsCoordinator = order.kind().isForCoordinators() || order.whose() == IncomingOrder.Whose.COLUMN;
        IncomingOrder.NightsOf nights = order.thermometer();
        boolean readable = nights == null
                || thermometers.readableBy(visitor.memberId(), visitor.coordinator()).stream()
                        .anyMatch(each -> each.id().equals(nights.id()));
        if ((needsCoordinator && !visitor.coordinator()) || !readable) {
            throw Refusal.forbidden(SAY.notAllowedAnyMore());
        }
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
