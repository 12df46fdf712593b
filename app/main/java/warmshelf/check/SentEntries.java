package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import warmshelf.sowing.HistoryStore;
import warmshelf.sowing.Sowing;
import warmshelf.tablet.TickReach;
import warmshelf.words.Units;

/** Takes ticks and readings that were not typed on a page: what waited on a phone, and what scripts send. One judge for both. */
public final class SentEntries {
    /** The most entries that are taken at once. */
    public static final int MOST = BatchForm.MOST;

    private final HistoryStore histories;
    private final LightUntil lightUntil;
    private final ReadingStore readings;
    private final BatchStore batches;

    SentEntries(HistoryStore histories, LightUntil lightUntil, ReadingStore readings, BatchStore batches) {
        this.histories = histories;
        this.lightUntil = lightUntil;
        this.readings = readings;
        this.batches = batches;
    }

    /**
     * Who sends, and when by this server.
     *
     * @param units in which they read the answers
     * @param zone the group's
     * @param now by the server's clock
     * @param pretended how far that clock is ahead of the real one on purpose
     * @param reach what they may tick
     */
    public record Sender(UUID memberId, Units units, ZoneId zone, Instant now, Duration pretended, TickReach reach) {
        LocalDate today() {
            return LocalDate.ofInstant(now, zone);
        }
    }

    /** A moment with its zone, such as 2027-03-01T07:00:00Z; empty where there is none. */
    public static Optional<Instant> moment(String text) {
        return BatchForm.moment(TextNode.valueOf(text));
    }

    /** The mat's name; empty where there is none. */
    public Optional<String> matName(UUID mat) {
        return readings.matName(mat);
    }

    /**
     * Keeps what can be kept; the answers come in the order in which the entries were sent.
     *
     * @param sentAt by the sender's clock
     */
    public List<SentAnswer> take(List<JsonNode> sent, Instant sentAt, Sender sender) {
        ClockSkew skew = ClockSkew.between(sentAt, sender.now(), sender.pretended());
        List<BatchStore.Numbered> entries = sent.stream()
                .map(entry -> new SentForm(entry, skew, sender.now(), sender.zone()))
                .map(entry -> new BatchStore.Numbered(entry.idAsSent(), checked(entry, sender)))
                .toList();
        return batches.keep(entries, sender.memberId(), sender.units()).stream()
                .map(answer -> answer.isNew() ? answer.with(skew.remark()) : answer)
                .toList();
    }

    private Sent checked(SentForm form, Sender sender) {
        TickReach reach = sender.reach();
        Optional<UUID> subject = form.subject();
        Optional<UUID> looker = form.looker().filter(reach::mayHaveLooked);
        if (form.isReading()) {
            if (subject.flatMap(readings::matName).isEmpty()) {
                return new Sent.Unfit(SAY.noSuchMat());
            }
            if (!reach.hasMat(subject.get())) {
                return new Sent.Unfit(SAY.beyondTablet());
            }
            return form.reading(subject.get())
                    .map(reading -> looker.map(reading::seenBy).orElse(reading))
                    .<Sent>map(Sent.AtMat::new)
                    .orElseGet(() -> new Sent.Unfit(form.problem()));
        }
        Optional<Sowing> sowing = subject.flatMap(histories::sowing);
        if (sowing.isEmpty()) {
            return new Sent.Unfit(SAY.noSuchSowing());
        }
        if (!reach.hasSowing(sowing.get().id())) {
            return new Sent.Unfit(SAY.beyondTablet());
        }
        return form.tick(sowing.get())
                .map(tick -> looker.map(tick::seenBy).orElse(tick))
                .<Sent>map(tick -> new Sent.AtSowing(
                        sowing.get().id(), tick, lightUntil.of(() -> histories.of(sowing.get()), tick, sender.today())))
                .orElseGet(() -> new Sent.Unfit(form.problem()));
    }
}
