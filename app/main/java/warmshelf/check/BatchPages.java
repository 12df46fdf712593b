package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import warmshelf.sowing.History;
import warmshelf.sowing.HistoryStore;
import warmshelf.web.Pages;
import warmshelf.web.PretendedClock;
import warmshelf.web.Refusal;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** Takes what waited on a phone without signal. */
public final class BatchPages implements Pages {
    private static final String ADDRESS = "/round/entries";

    private final HistoryStore histories;
    private final LightUntil lightUntil;
    private final ReadingStore readings;
    private final BatchStore batches;
    private final Clock clock;

    BatchPages(HistoryStore histories, LightUntil lightUntil, ReadingStore readings, BatchStore batches, Clock clock) {
        this.histories = histories;
        this.lightUntil = lightUntil;
        this.readings = readings;
        this.batches = batches;
        this.clock = clock;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.post(ADDRESS, this::take, Role.MEMBER);
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
        ClockSkew skew = ClockSkew.between(batch.sentAt(), now, PretendedClock.aheadOf(clock));
        List<BatchStore.Numbered> entries = batch.entries().stream()
                .map(entry -> new SentForm(entry, skew, now, visitor.zone()))
                .map(entry -> new BatchStore.Numbered(entry.idAsSent(), checked(entry, visitor)))
                .toList();
        List<SentAnswer> answers = batches.keep(entries, visitor.memberId(), visitor.units()).stream()
                .map(answer -> answer.answer().equals(SentAnswer.KEPT) ? answer.with(skew.remark()) : answer)
                .toList();
        ctx.json(Map.of("entries", answers, "at", now.toString()));
    }

    private Sent checked(SentForm form, Visitor visitor) {
        Optional<UUID> subject = form.subject();
        if (form.isReading()) {
            if (subject.flatMap(readings::matName).isEmpty()) {
                return new Sent.Unfit(SAY.noSuchMat());
            }
            return form.reading(subject.get())
                    .<Sent>map(Sent.AtMat::new)
                    .orElseGet(() -> new Sent.Unfit(form.problem()));
        }
        Optional<History> history = subject.flatMap(histories::find);
        if (history.isEmpty()) {
            return new Sent.Unfit(SAY.noSuchSowing());
        }
        return form.tick(history.get().sowing())
                .<Sent>map(tick -> new Sent.AtSowing(
                        history.get().sowing().id(), tick, lightUntil.of(history.get(), tick, visitor.today())))
                .orElseGet(() -> new Sent.Unfit(form.problem()));
    }
}
