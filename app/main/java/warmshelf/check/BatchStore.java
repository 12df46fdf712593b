package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.words.Units;

/**
 * Keeps what waited on a phone or on paper in one transaction, each entry behind a savepoint of its own: what can be kept is
 * kept. It is on the disk itself before the phone is told, because the phone forgets it then.
 */
public final class BatchStore {
    private final Database database;
    private final TickStore ticks;
    private final ReadingStore readings;

    BatchStore(Database database, TickStore ticks, ReadingStore readings) {
        this.database = database;
        this.ticks = ticks;
        this.readings = readings;
    }

    /** One entry with the id under which the phone waits for its answer. */
    record Numbered(String id, Sent sent) {}

    /** Keeps entries; the answers come in the order in which they were sent, in the units of who sent them. */
    List<SentAnswer> keep(List<Numbered> entries, UUID by, Units units) {
        // Sowings are held in one order and the entries of each as they were seen, so that two phones cannot wait for
        // each
        // other, and a look never comes before the sowing it looks at.
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparing((Integer i) -> subject(entries.get(i).sent()))
                .thenComparing(i -> seenOn(entries.get(i).sent()))
                .thenComparing(i -> seenAt(entries.get(i).sent())));
        Map<Integer, SentAnswer> answers = new LinkedHashMap<>();
        database.sql()
                .transaction(inside ->
                        order.forEach(i -> answers.put(i, keep(inside.dsl(), entries.get(i), by, units))));
        database.flush();
        List<SentAnswer> asSent = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            asSent.add(answers.get(i));
        }
        return asSent;
    }

    private static String subject(Sent sent) {
        if (sent instanceof Sent.AtSowing tick) {
            return tick.sowing().toString();
        }
        return sent instanceof Sent.AtMat mat ? mat.reading().mat().toString() : "";
    }

    /** Of what was written on paper only the day is known. */
    private static LocalDate seenOn(Sent sent) {
        if (sent instanceof Sent.AtSowing at) {
            return at.tick().seenOn();
        }
        return sent instanceof Sent.AtMat mat ? mat.reading().seenOn() : LocalDate.MIN;
    }

    private static String seenAt(Sent sent) {
        if (sent instanceof Sent.AtSowing at) {
            Tick.FromPhone phone = at.tick().fromPhone();
            return phone == null ? "" : phone.seenAt().toInstant().toString();
        }
        return sent instanceof Sent.AtMat mat
                ? mat.reading().seenAt().toInstant().toString()
                : "";
    }

    private SentAnswer keep(DSLContext tx, Numbered entry, UUID by, Units units) {
        if (entry.sent() instanceof Sent.AtSowing at) {
            return answer(entry.id(), ticks.keep(tx, at.sowing(), at.tick(), at.lightUntil(), by), units);
        }
        if (entry.sent() instanceof Sent.AtMat mat) {
            Decision<Boolean> decision = readings.add(tx, mat.reading(), by);
            return decision instanceof Decision.Done<Boolean> done
                    ? SentAnswer.kept(entry.id(), done.value(), "")
                    : SentAnswer.refused(
                            entry.id(), decision.refusal().orElseThrow().words(units), false);
        }
        return SentAnswer.refused(entry.id(), ((Sent.Unfit) entry.sent()).sentence(), false);
    }

    private static SentAnswer answer(String id, Decision<TickOutcome> decision, Units units) {
        if (decision instanceof Decision.Done<TickOutcome> done) {
            return done.value() instanceof TickOutcome.Kept kept
                    ? SentAnswer.kept(id, kept.again(), kept.remark(units))
                    : SentAnswer.repeated(id, ((TickOutcome.Repeated) done.value()).entry());
        }
        return SentAnswer.refused(
                id,
                decision.refusal().map(why -> why.words(units)).orElseGet(SAY::noSuchSowing),
                decision instanceof Decision.Overtaken);
    }
}
