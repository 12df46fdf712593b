package warmshelf.label;

import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SHORT_CODE;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.TRIAL;
import static warmshelf.db.generated.Tables.TRIAL_SOWING;
import static warmshelf.label.LabelSentences.SAY;

import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.exception.IntegrityConstraintViolationException;
import org.jooq.impl.DSL;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.shelf.OnSiteStore;
import warmshelf.sowing.TrialPart;

/** Keeps which code means what. A code is made when it is first to be shown, and never changed or given anew. */
final class CodeStore {
    private static final int TRIES = 20;

    private final DSLContext sql;
    private final Audit audit;
    private final SecureRandom random = new SecureRandom();

    CodeStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** What a code stands for. */
    enum Kind {
        RACK("rack"),
        MAT("mat"),
        SOWING("sowing");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    /**
     * Something to be labelled.
     *
     * @param where or whose, in words
     */
    record Subject(Kind kind, UUID id, String title, String where) {}

    /** The address within this site that a code opens; empty when no such code was ever made. */
    Optional<String> address(ShortCode code) {
        return sql.select(SHORT_CODE.KIND, SHORT_CODE.SUBJECT_ID)
                .from(SHORT_CODE)
                .where(SHORT_CODE.CODE.eq(code.text()))
                .fetchOptional()
                .map(found -> switch (found.value1()) {
                    case "rack" -> rackAddress(found.value2());
                    case "mat" -> "/mats/" + found.value2();
                    default -> "/sowings/" + found.value2();
                });
    }

    private String rackAddress(UUID rack) {
        return sql.select(RACK.SITE_ID)
                .from(RACK)
                .where(RACK.ID.eq(rack))
                .fetchOptional(RACK.SITE_ID)
                .map(site -> "/racks?site=" + site + "#rack-" + rack)
                .orElse("/racks");
    }

    /** The codes of some subjects in their order; those that have none yet get theirs. */
    List<ShortCode> codesOf(List<Subject> subjects, UUID by) {
        return sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            Map<UUID, String> known = tx.select(SHORT_CODE.SUBJECT_ID, SHORT_CODE.CODE)
                    .from(Database.listed(
                            SHORT_CODE,
                            SHORT_CODE.SUBJECT_ID,
                            subjects.stream().map(Subject::id).toList()))
                    .fetchMap(SHORT_CODE.SUBJECT_ID, SHORT_CODE.CODE);
            List<ShortCode> codes = new ArrayList<>();
            for (Subject subject : subjects) {
                String code = known.get(subject.id());
                codes.add(code == null ? make(tx, subject, by) : new ShortCode(code));
            }
            return codes;
        });
    }

    private ShortCode make(DSLContext tx, Subject subject, UUID by) {
        for (int tried = 0; tried < TRIES; tried++) {
            boolean added = added(tx, subject, ShortCode.random(random), by);
            Optional<String> kept = tx.select(SHORT_CODE.CODE)
                    .from(SHORT_CODE)
                    .where(SHORT_CODE.KIND.eq(subject.kind().word()), SHORT_CODE.SUBJECT_ID.eq(subject.id()))
                    .fetchOptional(SHORT_CODE.CODE);
            if (kept.isPresent()) {
                if (added) {
                    audit.write(tx, by, "make code", subject.kind().word(), subject.id(), kept.get());
                }
                return new ShortCode(kept.get());
            }
        }
        throw new IllegalStateException("no free code was found for " + subject);
    }

    /** A code that is taken, or somebody who labels the same at this moment, is told by the keys; then no row is added. */
    private boolean added(DSLContext tx, Subject subject, ShortCode code, UUID by) {
        try {
            tx.transaction(inside -> inside.dsl()
                    .insertInto(SHORT_CODE)
                    .set(SHORT_CODE.CODE, code.text())
                    .set(SHORT_CODE.KIND, subject.kind().word())
                    .set(SHORT_CODE.SUBJECT_ID, subject.id())
                    .set(SHORT_CODE.MADE_BY, by)
                    .set(SHORT_CODE.MADE_AT, audit.now())
                    .execute());
            return true;
        } catch (IntegrityConstraintViolationException taken) {
            return false;
        }
    }

    /** Every rack and mat in walking order, each rack before its mats. */
    List<Subject> standing() {
        List<Subject> standing = new ArrayList<>();
        Map<UUID, List<Subject>> mats = mats();
        sql.select(RACK.ID, RACK.NAME, SITE.NAME)
                .from(RACK)
                .join(SITE)
                .on(SITE.ID.eq(RACK.SITE_ID))
                .orderBy(SITE.WALK_ORDER, SITE.NAME, RACK.WALK_ORDER, RACK.NAME)
                .forEach(rack -> {
                    standing.add(new Subject(Kind.RACK, rack.value1(), SAY.rack(rack.value2()), rack.value3()));
                    standing.addAll(mats.getOrDefault(rack.value1(), List.of()));
                });
        return standing;
    }

    private Map<UUID, List<Subject>> mats() {
        return OnSiteStore.ofMats(sql.select(RACK.ID, MAT.ID, MAT.NAME, SITE.NAME, RACK.NAME, SHELF.FROM_TOP)
                        .from(MAT))
                .orderBy(SHELF.FROM_TOP, MAT.WALK_ORDER, MAT.NAME)
                .fetchGroups(
                        row -> row.value1(),
                        row -> new Subject(
                                Kind.MAT,
                                row.value2(),
                                SAY.mat(row.value3()),
                                SAY.shelf(row.value4(), row.value5(), row.value6())));
    }

    /** A member's sowings that are under way, in the order of asking. */
    List<Subject> sowingsOf(UUID member, UnaryOperator<String> cropNames) {
        return sowings(SOWING.MEMBER_ID.eq(member), cropNames);
    }

    /** Everyone's sowings that are under way. */
    List<Subject> allSowings(UnaryOperator<String> cropNames) {
        return sowings(DSL.noCondition(), cropNames);
    }

    /** One sowing, if it is under way. */
    List<Subject> sowing(UUID id, UnaryOperator<String> cropNames) {
        return sowings(SOWING.ID.eq(id), cropNames);
    }

    private List<Subject> sowings(Condition which, UnaryOperator<String> cropNames) {
        return sql.select(SOWING.ID, SOWING.CROP_ID, LOT.VARIETY, MEMBER.NAME, TRIAL.NUMBER, TRIAL_SOWING.LETTER)
                .from(SOWING)
                .join(LOT)
                .on(LOT.ID.eq(SOWING.LOT_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(SOWING.MEMBER_ID))
                .leftJoin(TRIAL_SOWING)
                .on(TRIAL_SOWING.SOWING_ID.eq(SOWING.ID))
                .leftJoin(TRIAL)
                .on(TRIAL.ID.eq(TRIAL_SOWING.TRIAL_ID))
                .where(which, SOWING.STAGE.notIn("planted-out", "given-up", "withdrawn"))
                .orderBy(SOWING.ASKED_AT, SOWING.ID)
                .fetch(row -> {
                    String crop = cropNames.apply(row.value2());
                    String title = row.value3().isEmpty() ? crop : crop + " · " + row.value3();
                    String part = row.value5() == null ? "" : " · " + TrialPart.words(row.value5(), row.value6());
                    return new Subject(Kind.SOWING, row.value1(), title + part, row.value4());
                });
    }
}
