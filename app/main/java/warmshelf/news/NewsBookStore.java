package warmshelf.news;

import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.NEWS;
import static warmshelf.db.generated.Tables.SOWING;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;

/** Writes what is new for whom, within the transaction in which it happens. */
public final class NewsBookStore {
    /** So long news stay, seen or not. */
    public static final Duration KEPT = Duration.ofDays(90);

    private static final Set<NewsKind> DECISIONS =
            Set.of(NewsKind.PLACED, NewsKind.REFUSED, NewsKind.WAITING, NewsKind.NO_PLACE);

    private final Audit audit;

    public NewsBookStore(Audit audit) {
        this.audit = audit;
    }

    /** Tells one member; nobody is told what they did themselves. */
    public void tell(DSLContext tx, UUID member, NewsEvent event) {
        if (member.equals(event.by())) {
            return;
        }
        forgetOld(tx, member);
        tx.insertInto(NEWS)
                .set(NEWS.ID, UUID.randomUUID())
                .set(NEWS.MEMBER_ID, member)
                .set(NEWS.KIND, event.kind().word())
                .set(NEWS.SOWING_ID, event.sowing())
                .set(NEWS.ENTRY_ID, event.entry())
                .set(NEWS.SWAP_ID, event.swap())
                .set(NEWS.CAUSED_BY, event.by())
                .set(NEWS.TOLD_AT, audit.now())
                .execute();
    }

    /** Tells whose sowing it is. */
    public void tellGrower(DSLContext tx, NewsEvent event) {
        grower(tx, event).ifPresent(grower -> tell(tx, grower, event));
    }

    /** Tells everyone of the group but the grower, where it is about a sowing. */
    public void tellTheOthers(DSLContext tx, NewsEvent event) {
        Optional<UUID> grower = grower(tx, event);
        List<UUID> members =
                tx.select(MEMBER.ID).from(MEMBER).where(MEMBER.LEFT_AT.isNull()).fetch(MEMBER.ID);
        members.stream()
                .filter(member -> grower.filter(member::equals).isEmpty())
                .forEach(member -> tell(tx, member, event));
    }

    private static Optional<UUID> grower(DSLContext tx, NewsEvent event) {
        return tx.select(SOWING.MEMBER_ID)
                .from(SOWING)
                .where(SOWING.ID.eq(event.sowing()))
                .fetchOptional(SOWING.MEMBER_ID);
    }

    /** Tells a grower what was decided on a request, in place of what was decided before and not seen yet. */
    public void tellDecision(DSLContext tx, NewsEvent event) {
        tx.deleteFrom(NEWS)
                .where(
                        NEWS.SOWING_ID.eq(event.sowing()),
                        NEWS.SEEN_AT.isNull(),
                        NEWS.KIND.in(DECISIONS.stream().map(NewsKind::word).toList()))
                .execute();
        tellGrower(tx, event);
    }

    /** Takes back what an entry told and nobody has seen yet: the entry was corrected or taken back. */
    public void takeBack(DSLContext tx, UUID entry) {
        tx.deleteFrom(NEWS)
                .where(NEWS.ENTRY_ID.eq(entry), NEWS.SEEN_AT.isNull())
                .execute();
    }

    /** Takes back what nobody has seen yet of a season's sowings, which are over. */
    public void forgetSeason(DSLContext tx, int season) {
        tx.deleteFrom(NEWS)
                .where(
                        NEWS.SEEN_AT.isNull(),
                        NEWS.SOWING_ID.in(tx.select(SOWING.ID).from(SOWING).where(SOWING.SEASON.eq(season))))
                .execute();
    }

    private void forgetOld(DSLContext tx, UUID member) {
        tx.deleteFrom(NEWS)
                .where(NEWS.MEMBER_ID.eq(member), NEWS.TOLD_AT.lt(audit.now().minus(KEPT)))
                .execute();
    }
}
