package warmshelf.frost.garden;

import static warmshelf.db.generated.Tables.ACCEPTED_RISK;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.UUID;
import warmshelf.crop.Hardiness;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.frost.evidence.VersionStore;

/** The chances of a later frost that members accept, where these are not the usual ones. */
public final class AcceptedRiskStore {
    private final Database database;
    private final Audit audit;

    public AcceptedRiskStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
    }

    /** What a member accepts for plants of some hardiness, 0 to 1; a class that is missing has its usual risk. */
    public Map<Hardiness, Double> of(UUID memberId) {
        Map<Hardiness, Double> risks = new EnumMap<>(Hardiness.class);
        database.sql()
                .selectFrom(ACCEPTED_RISK)
                .where(ACCEPTED_RISK.MEMBER_ID.eq(memberId))
                .forEach(row -> risks.put(
                        Hardiness.named(row.getHardiness()), row.getRisk().doubleValue()));
        return risks;
    }

    /** Replaces what a member accepts; a class that is missing goes back to its usual risk. */
    void set(UUID memberId, Map<Hardiness, Double> risks, UUID by) {
        database.sql().transaction(work -> {
            VersionStore.grow(work.dsl());
            work.dsl()
                    .deleteFrom(ACCEPTED_RISK)
                    .where(ACCEPTED_RISK.MEMBER_ID.eq(memberId))
                    .execute();
            risks.forEach((hardiness, risk) -> work.dsl()
                    .insertInto(ACCEPTED_RISK)
                    .set(ACCEPTED_RISK.MEMBER_ID, memberId)
                    .set(ACCEPTED_RISK.HARDINESS, hardiness.words())
                    .set(ACCEPTED_RISK.RISK, BigDecimal.valueOf(risk))
                    .set(ACCEPTED_RISK.SET_AT, audit.now())
                    .execute());
            audit.write(work.dsl(), by, "accept", "frost risk", memberId, words(risks));
        });
    }

    private static String words(Map<Hardiness, Double> risks) {
        StringBuilder words = new StringBuilder();
        for (Hardiness hardiness : Hardiness.values()) {
            Double risk = risks.get(hardiness);
            words.append(words.isEmpty() ? "" : ", ")
                    .append(hardiness.words())
                    .append(' ')
                    .append(risk == null ? "as usual" : String.valueOf(risk));
        }
        return words.toString();
    }
}
