package warmshelf.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Database;

/**
 * Keeps what waited on a phone in one transaction, each entry behind a savepoint of its own: what can be kept is kept. It is on
 * the disk itself before the phone is told, because the phone forgets it then.
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

    /** Keeps entries; the answers come in the order in which they were sent. */
    List<SentAnswer> keep(List<Numbered> entries, UUID by) {
        // Sowings are held in one order and the entries of each as they were seen, so that two phones cannot wait for
        // each
        // other, and a look never comes before the sowing it looks at.
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparing((Integer i) -> subject(entries.get(i).sent()))
                .thenComparing(i -> seenAt(entries.get(i).sent())));
        Map<Integer, SentAnswer> answers = new LinkedHashMap<>();
        database.sql()
                .transaction(inside -> order.forEach(i -> answers.put(i, keep(inside.dsl(), entries.get(i), by))));
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

    private static String seenAt(Sent sent) {
        if (sent instanceof Sent.AtSowing at) {
            Tick.FromPhone phone = at.tick().fromPhone();
            return phone == null ? "" : phone.seenAt().toInstant().toString();
        }
        return sent instanceof Sent.AtMat mat
                ? mat.reading().seenAt().toInstant().toString()
                : "";
    }

    private SentAnswer keep(DSLContext tx, Numbered entry, UUID by) {
        if (entry.sent() instanceof Sent.AtSowing at) {
            return answer(entry.id(), ticks.keep(tx, at.sowing(), at.tick(), at.lightUntil(), by));
        }
        if (entry.sent() instanceof Sent.AtMat mat) {
            return switch (readings.add(tx, mat.reading(), by)) {
                case ADDED -> SentAnswer.kept(entry.id(), false, "");
                case THERE_BEFORE -> SentAnswer.kept(entry.id(), true, "");
                case ID_IN_USE ->
                    SentAnswer.refused(entry.id(), "This reading's id was used for something else already.", false);
            };
        }
        return SentAnswer.refused(entry.id(), ((Sent.Unfit) entry.sent()).sentence(), false);
    }

    private static SentAnswer answer(String id, TickOutcome outcome) {
        if (outcome instanceof TickOutcome.Refused refused) {
            return SentAnswer.refused(id, refused.sentence(), refused.again());
        }
        if (outcome instanceof TickOutcome.Repeated repeated) {
            return SentAnswer.repeated(id, repeated.entry());
        }
        TickOutcome.Kept kept = (TickOutcome.Kept) outcome;
        return SentAnswer.kept(id, kept.again(), kept.remark());
    }
}
