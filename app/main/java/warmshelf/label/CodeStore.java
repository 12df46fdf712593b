package warmshelf.label;

import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SHORT_CODE;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.label.LabelSentences.SAY;

import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.exception.IntegrityConstraintViolationException;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.shelf.OnSiteStore;

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
        SHELF("shelf"),
        MAT("mat"),
        SOWING("sowing");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }

        static Kind named(String word) {
            for (Kind kind : values()) {
                if (kind.word.equals(word)) {
                    return kind;
                }
            }
            throw new IllegalArgumentException("no code stands for a '" + word + "'");
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
                    case "rack" -> rackAddress(RACK.ID.eq(found.value2()));
                    case "shelf" -> rackAddress(SHELF.ID.eq(found.value2()));
                    case "mat" -> "/mats/" + found.value2();
                    default -> "/sowings/" + found.value2();
                });
    }

    private String rackAddress(Condition which) {
        return sql
                .select(RACK.SITE_ID, RACK.ID)
                .from(RACK)
                .leftJoin(SHELF)
                .on(SHELF.RACK_ID.eq(RACK.ID))
                .where(which)
                .fetch()
                .stream()
                .findFirst()
                .map(found -> "/racks?site=" + found.value1() + "#rack-" + found.value2())
                .orElse("/racks");
    }

    /** The codes of some subjects in their order; those that have none yet get theirs. */
    List<ShortCode> codesOf(List<Subject> subjects, UUID by) {
        return sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            Map<UUID, ShortCode> known =
                    new HashMap<>(known(tx, subjects.stream().map(Subject::id).toList()));
            return subjects.stream()
                    .map(subject -> known.computeIfAbsent(subject.id(), none -> make(tx, subject, by)))
                    .toList();
        });
    }

    /** The codes that some things have by now. */
    Map<UUID, ShortCode> known(Collection<UUID> subjects) {
        return known(sql, subjects);
    }

    private static Map<UUID, ShortCode> known(DSLContext tx, Collection<UUID> subjects) {
        return tx.select(SHORT_CODE.SUBJECT_ID, SHORT_CODE.CODE)
                .from(Database.listed(
                        SHORT_CODE,
                        SHORT_CODE.SUBJECT_ID,
                        subjects.stream().distinct().toList()))
                .fetchMap(row -> row.value1(), row -> new ShortCode(row.value2()));
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

    /** Every rack, mat and lit shelf in walking order, each rack before what is on it. */
    List<Subject> standing() {
        List<Subject> standing = new ArrayList<>();
        Map<UUID, List<Subject>> mats = mats();
        Map<UUID, List<Subject>> shelves = litShelves();
        sql.select(RACK.ID, RACK.NAME, SITE.NAME)
                .from(RACK)
                .join(SITE)
                .on(SITE.ID.eq(RACK.SITE_ID))
                .orderBy(SITE.WALK_ORDER, SITE.NAME, RACK.WALK_ORDER, RACK.NAME)
                .forEach(rack -> {
                    standing.add(new Subject(Kind.RACK, rack.value1(), SAY.rack(rack.value2()), rack.value3()));
                    standing.addAll(mats.getOrDefault(rack.value1(), List.of()));
                    standing.addAll(shelves.getOrDefault(rack.value1(), List.of()));
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

    private Map<UUID, List<Subject>> litShelves() {
        return OnSiteStore.ofShelves(sql.select(RACK.ID, SHELF.ID, SITE.NAME, RACK.NAME, SHELF.FROM_TOP)
                        .from(SHELF))
                .where(SHELF.LIT_PLACES.gt(0))
                .orderBy(SHELF.FROM_TOP)
                .fetchGroups(
                        row -> row.value1(),
                        row -> new Subject(
                                Kind.SHELF,
                                row.value2(),
                                SAY.litShelf(row.value5()),
                                SAY.underLight(row.value3(), row.value4())));
    }

    /** The site of each place on which something can lie. */
    Map<UUID, UUID> sitesOfPlaces() {
        return OnSiteStore.ofPlaces(sql.select(PLACE.ID, SITE.ID).from(PLACE)).fetchMap(PLACE.ID, SITE.ID);
    }

    /** A site by its name. */
    record SiteName(UUID id, String name) {}

    /** The sites in walking order. */
    List<SiteName> sites() {
        return sql.select(SITE.ID, SITE.NAME)
                .from(SITE)
                .orderBy(SITE.WALK_ORDER, SITE.NAME)
                .fetch(row -> new SiteName(row.value1(), row.value2()));
    }
}
