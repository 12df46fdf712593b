package warmshelf.tablet;

import static org.jooq.impl.DSL.exists;
import static org.jooq.impl.DSL.field;
import static org.jooq.impl.DSL.lower;
import static org.jooq.impl.DSL.selectOne;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.MEMBER_SESSION;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.TABLET;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.db.generated.tables.Member;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.group.AdmissionStore;
import warmshelf.group.CalledStore;
import warmshelf.group.Link;
import warmshelf.group.LinkStore;
import warmshelf.group.MemberStore;
import warmshelf.group.SessionStore;
import warmshelf.words.Choice;

/** Keeps the tablets at the racks, and lets them in by links that work once. */
public final class TabletStore {
    private static final String SUBJECT = "tablet";
    private static final Member ENDER = MEMBER.as("ender");

    private final Database database;
    private final Audit audit;
    private final MemberStore members;
    private final LinkStore links;
    private final AdmissionStore admissions;

    public TabletStore(
            Database database, Audit audit, MemberStore members, LinkStore links, AdmissionStore admissions) {
        this.database = database;
        this.audit = audit;
        this.members = members;
        this.links = links;
        this.admissions = admissions;
    }

    /** All of them by name; those that were ended last. */
    List<Tablet> all(ZoneId zone) {
        Field<Boolean> opens = field(exists(selectOne()
                        .from(MEMBER_SESSION)
                        .where(MEMBER_SESSION.MEMBER_ID.eq(TABLET.ID), MEMBER_SESSION.EXPIRES_AT.gt(audit.now()))))
                .as("opens");
        return database.sql()
                .select(TABLET.fields())
                .select(SITE.NAME, MEMBER.CALLED, ENDER.CALLED, opens)
                .from(TABLET)
                .join(SITE)
                .on(SITE.ID.eq(TABLET.SITE_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(TABLET.MADE_BY))
                .leftJoin(ENDER)
                .on(ENDER.ID.eq(TABLET.ENDED_BY))
                .orderBy(TABLET.ENDED_AT.isNotNull(), lower(TABLET.NAME), TABLET.MADE_AT)
                .fetch(row -> tablet(row, row.get(opens), zone));
    }

    private static Tablet tablet(Record row, boolean opens, ZoneId zone) {
        @Nullable OffsetDateTime seen = row.get(TABLET.LAST_SEEN_AT);
        @Nullable OffsetDateTime ended = row.get(TABLET.ENDED_AT);
        return new Tablet(
                row.get(TABLET.ID),
                row.get(TABLET.NAME),
                row.get(SITE.NAME),
                row.get(MEMBER.CALLED),
                row.get(TABLET.MADE_AT).atZoneSameInstant(zone).toLocalDate(),
                seen == null
                        ? null
                        : seen.atZoneSameInstant(zone).toLocalDateTime().truncatedTo(ChronoUnit.MINUTES),
                opens,
                row.get(ENDER.CALLED),
                ended == null ? null : ended.atZoneSameInstant(zone).toLocalDate());
    }

    /** The sites at which one can stand, in walking order: those that are not to be retired. */
    List<Choice> sites() {
        return database.sql()
                .select(SITE.ID, SITE.NAME)
                .from(SITE)
                .where(SITE.RETIRED_FROM.isNull())
                .orderBy(SITE.WALK_ORDER, SITE.NAME)
                .fetch(row -> new Choice(row.value1().toString(), row.value2()));
    }

    /** Makes a tablet for a site, with the row that stands as its author. Returns the token of the link that opens it. */
    Decision<String> make(String name, UUID site, UUID by) {
        return Decision.of(() -> database.sql().transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            CalledStore.oneByOne(tx);
            refuseName(tx, name);
            if (!tx.fetchExists(SITE, SITE.ID.eq(site))) {
                throw Declined.refused(new TabletRefusal.SiteGone());
            }
            UUID id = members.addTablet(tx, TabletSentences.SAY.author(name));
            tx.insertInto(TABLET)
                    .set(TABLET.ID, id)
                    .set(TABLET.NAME, name)
                    .set(TABLET.SITE_ID, site)
                    .set(TABLET.MADE_BY, by)
                    .set(TABLET.MADE_AT, audit.now())
                    .execute();
            audit.write(tx, by, "make tablet", SUBJECT, id, name);
            return links.makeTablet(tx, id, name, by);
        }));
    }

    private static void refuseName(DSLContext tx, String name) {
        if (tx.fetchExists(TABLET, lower(TABLET.NAME).eq(lower(name)), TABLET.ENDED_AT.isNull())) {
            throw Declined.refused(new TabletRefusal.NameTaken(name));
        }
    }

    /** Makes a new link for a tablet that has lost its sign-in; where it was open until now it is signed out. */
    Decision<Fresh> makeLink(UUID id, UUID by) {
        return Decision.of(() -> database.sql().transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            String name = held(tx, id);
            SessionStore.endAll(tx, id);
            return new Fresh(name, links.makeTablet(tx, id, name, by));
        }));
    }

    /** A link just made, with the tablet's name; it is kept nowhere. */
    record Fresh(String name, String token) {}

    /** Ends a tablet: whatever it was open on is signed out at once. Returns its name. */
    Decision<String> end(UUID id, UUID by) {
        return Decision.of(() -> database.sql().transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            String name = held(tx, id);
            SessionStore.endAll(tx, id);
            LinkStore.withdrawAllOf(tx, id, audit.now());
            tx.update(TABLET)
                    .set(TABLET.ENDED_BY, by)
                    .set(TABLET.ENDED_AT, audit.now())
                    .where(TABLET.ID.eq(id))
                    .execute();
            audit.write(tx, by, "end tablet", SUBJECT, id, name);
            return name;
        }));
    }

    /** Lets a tablet in by its link; the token of its session. */
    Decision<String> open(Link link, UUID id) {
        return admissions.byLink(link, tx -> {
            held(tx, id);
            SessionStore.endAll(tx, id);
            tx.update(TABLET)
                    .set(TABLET.LAST_SEEN_AT, audit.now())
                    .where(TABLET.ID.eq(id))
                    .execute();
            return id;
        });
    }

    /** The name of a tablet that has not been ended, whose row is held until the transaction ends. */
    private static String held(DSLContext tx, UUID id) {
        Record row = tx.select(TABLET.NAME, TABLET.ENDED_AT)
                .from(TABLET)
                .where(TABLET.ID.eq(id))
                .forUpdate()
                .fetchOptional()
                .orElseThrow(Declined::missing);
        if (row.get(TABLET.ENDED_AT) != null) {
            throw Declined.gone(new TabletRefusal.Ended(row.get(TABLET.NAME)));
        }
        return row.get(TABLET.NAME);
    }
}
