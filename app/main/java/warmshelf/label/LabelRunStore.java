package warmshelf.label;

import static warmshelf.db.generated.Tables.LABEL_PRINT;
import static warmshelf.db.generated.Tables.LABEL_RUN;
import static warmshelf.db.generated.Tables.MEMBER;

import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.sowing.History;

/** Keeps which labels were made, and so what has none yet. */
public final class LabelRunStore {
    private final DSLContext sql;
    private final Audit audit;

    public LabelRunStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** How labels are printed; for those written by hand {@link #BY_HAND}. */
    public record Manner(String stock, @Nullable UUID printer, int startAt, boolean cuttingLines) {
        public static final Manner BY_HAND = new Manner(LabelRun.BY_HAND, null, 1, false);
    }

    /** The same of some sowings alone. */
    public Unlabelled unlabelled(Collection<UUID> sowings) {
        return new Unlabelled(labelled(Database.listed(LABEL_PRINT, LABEL_PRINT.SUBJECT_ID, sowings)));
    }

    /** What sowings have been labelled, by their ids; what did not come out does not count. */
    Map<UUID, Set<LabelPurpose>> labelled() {
        return labelled(LABEL_PRINT);
    }

    private Map<UUID, Set<LabelPurpose>> labelled(Table<?> among) {
        Map<UUID, Set<LabelPurpose>> labelled = new HashMap<>();
        sql.select(LABEL_PRINT.SUBJECT_ID, LABEL_PRINT.PURPOSE)
                .from(among)
                .join(LABEL_RUN)
                .on(LABEL_RUN.ID.eq(LABEL_PRINT.RUN_ID))
                .where(LABEL_RUN.UNDONE_AT.isNull())
                .forEach(row -> labelled.computeIfAbsent(row.value1(), none -> EnumSet.noneOf(LabelPurpose.class))
                        .add(LabelPurpose.named(row.value2())));
        return labelled;
    }

    /** Tells of each sowing whether something of it that wants a label has none. */
    public Unlabelled unlabelled() {
        return new Unlabelled(labelled());
    }

    /** What has been labelled, by ids of sowings. */
    public record Unlabelled(Map<UUID, Set<LabelPurpose>> labelled) {
        /** Whether a sowing wants a label that it has not. */
        public boolean includes(History history) {
            Set<LabelPurpose> has = labelled.getOrDefault(history.sowing().id(), Set.of());
            return !has.containsAll(LabelPurpose.wantedBy(history.sowing(), history.progress()));
        }
    }

    /** Keeps that sowings have the labels they want, written or printed; for whoever does not go by pages. */
    public void label(List<History> histories, UUID by) {
        List<LabelRun.Line> lines = histories.stream()
                .flatMap(each -> LabelPurpose.wantedBy(each.sowing(), each.progress()).stream()
                        .map(purpose -> new LabelRun.Line(
                                CodeStore.Kind.SOWING, each.sowing().id(), purpose, 0)))
                .toList();
        keep(Manner.BY_HAND, lines, by);
    }

    /** Keeps labels that were made, and with them that what they are for is labelled. */
    UUID keep(Manner manner, List<LabelRun.Line> lines, UUID by) {
        UUID id = UUID.randomUUID();
        int labels = lines.stream().mapToInt(LabelRun.Line::copies).sum();
        sql.transaction(inside -> {
            DSLContext tx = inside.dsl();
            tx.insertInto(LABEL_RUN)
                    .set(LABEL_RUN.ID, id)
                    .set(LABEL_RUN.STOCK, manner.stock())
                    .set(LABEL_RUN.PRINTER_ID, manner.printer())
                    .set(LABEL_RUN.START_AT, manner.startAt())
                    .set(LABEL_RUN.CUTTING_LINES, manner.cuttingLines())
                    .set(LABEL_RUN.LABELS, labels)
                    .set(LABEL_RUN.MADE_BY, by)
                    .set(LABEL_RUN.MADE_AT, audit.now())
                    .execute();
            for (int i = 0; i < lines.size(); i++) {
                LabelRun.Line line = lines.get(i);
                tx.insertInto(LABEL_PRINT)
                        .set(LABEL_PRINT.RUN_ID, id)
                        .set(LABEL_PRINT.LINE, i)
                        .set(LABEL_PRINT.KIND, line.kind().word())
                        .set(LABEL_PRINT.SUBJECT_ID, line.subject())
                        .set(LABEL_PRINT.PURPOSE, line.purpose().word())
                        .set(LABEL_PRINT.COPIES, line.copies())
                        .execute();
            }
            audit.write(tx, by, "make labels", "label run", id, manner.stock() + ", " + labels);
        });
        return id;
    }

    Optional<LabelRun> find(UUID id) {
        return run(LABEL_RUN.ID.eq(id));
    }

    /** What a member printed last, whether it came out or not. */
    Optional<LabelRun> lastOf(UUID member) {
        return run(LABEL_RUN.MADE_BY.eq(member).and(LABEL_RUN.STOCK.ne(LabelRun.BY_HAND)));
    }

    /** What anybody printed last. */
    Optional<LabelRun> last() {
        return run(LABEL_RUN.STOCK.ne(LabelRun.BY_HAND));
    }

    private Optional<LabelRun> run(Condition which) {
        return sql.select(DSL.asterisk())
                .from(LABEL_RUN)
                .join(MEMBER)
                .on(MEMBER.ID.eq(LABEL_RUN.MADE_BY))
                .where(which)
                .orderBy(LABEL_RUN.MADE_AT.desc(), LABEL_RUN.ID)
                .limit(1)
                .fetchOptional(this::run);
    }

    private LabelRun run(Record row) {
        UUID id = row.get(LABEL_RUN.ID);
        List<LabelRun.Line> lines = sql.selectFrom(LABEL_PRINT)
                .where(LABEL_PRINT.RUN_ID.eq(id))
                .orderBy(LABEL_PRINT.LINE)
                .fetch(line -> new LabelRun.Line(
                        CodeStore.Kind.named(line.getKind()),
                        line.getSubjectId(),
                        LabelPurpose.named(line.getPurpose()),
                        line.getCopies()));
        return new LabelRun(
                id,
                row.get(LABEL_RUN.STOCK),
                row.get(LABEL_RUN.PRINTER_ID),
                row.get(LABEL_RUN.START_AT),
                row.get(LABEL_RUN.CUTTING_LINES),
                row.get(LABEL_RUN.LABELS),
                row.get(LABEL_RUN.MADE_BY),
                row.get(MEMBER.CALLED),
                row.get(LABEL_RUN.MADE_AT),
                row.get(LABEL_RUN.UNDONE_AT) != null,
                lines);
    }

    /** Takes back that labels were made. Asked twice it stays as it is. */
    Decision<LabelRun> undo(UUID id, UUID by, boolean coordinator) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            LabelRun run = find(id).orElseThrow(Declined::missing);
            if (!run.mayBeUndoneBy(by, coordinator)) {
                throw Declined.refused(new LabelRefusal.NotYours(run.byName()));
            }
            DSLContext tx = inside.dsl();
            int changed = tx.update(LABEL_RUN)
                    .set(LABEL_RUN.UNDONE_BY, by)
                    .set(LABEL_RUN.UNDONE_AT, audit.now())
                    .where(LABEL_RUN.ID.eq(id), LABEL_RUN.UNDONE_AT.isNull())
                    .execute();
            if (changed == 1) {
                audit.write(tx, by, "undo labels", "label run", id, run.labels() + " labels");
            }
            return run;
        }));
    }
}
