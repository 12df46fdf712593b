package warmshelf.check;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import warmshelf.tablet.TabletReachPages;
import warmshelf.web.Pages;
import warmshelf.web.PretendedClock;
import warmshelf.web.Refusal;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** Takes what waited on a phone without signal. */
public final class BatchPages implements Pages {
    private static final String ADDRESS = "/round/entries";

    private final SentEntries sent;
    private final TabletReachPages reach;
    private final Clock clock;

    BatchPages(SentEntries sent, TabletReachPages reach, Clock clock) {
        this.sent = sent;
        this.reach = reach;
        this.clock = clock;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.post(ADDRESS, this::take, Role.TABLET);
    }

    @Override
    public Set<String> forScripts() {
        return Set.of(ADDRESS);
    }

    private void take(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        BatchForm form = new BatchForm();
        Optional<BatchForm.Batch> read = form.batch(ctx.body());
        if (read.isEmpty()) {
            throw Refusal.of(HttpStatus.BAD_REQUEST, form.problem());
        }
        BatchForm.Batch batch = read.get();
        if (!batch.member().isEmpty()
                && !batch.member().equals(visitor.memberId().toString())) {
            // A phone that two people share: nobody's ticks are kept under the other's name.
            ctx.status(HttpStatus.CONFLICT).json(Map.of("otherMember", true));
            return;
        }
        Instant now = clock.instant();
        List<SentAnswer> answers = sent.take(
                batch.entries(),
                batch.sentAt(),
                new SentEntries.Sender(
                        visitor.memberId(),
                        visitor.units(),
                        visitor.zone(),
                        now,
                        PretendedClock.aheadOf(clock),
                        reach.of(visitor)));
        ctx.json(Map.of("entries", answers, "at", now.toString()));
    }
}
