package warmshelf.group;

import static org.jooq.impl.DSL.coalesce;
import static org.jooq.impl.DSL.field;
import static org.jooq.impl.DSL.listAgg;
import static org.jooq.impl.DSL.select;
import static org.jooq.impl.SQLDataType.VARCHAR;
import static warmshelf.db.generated.Tables.GROUP_PROFILE;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.MEMBER_SESSION;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.SITE_COORDINATOR;
import static warmshelf.db.generated.Tables.TABLET;

import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Reach;
import warmshelf.web.Doors;
import warmshelf.web.GroupFace;
import warmshelf.web.SessionCookie;
import warmshelf.web.TabletVisit;
import warmshelf.web.Visitor;
import warmshelf.words.Units;

/** Who is signed in, kept in the database so that a restart or a second node signs nobody out. */
public final class SessionStore implements Doors {
    private static final Field<String> TEMPERATURE =
            coalesce(MEMBER.TEMPERATURE_UNIT, GROUP_PROFILE.TEMPERATURE_UNIT).as("shown_temperature");
    private static final Field<String> LENGTH =
            coalesce(MEMBER.LENGTH_UNIT, GROUP_PROFILE.LENGTH_UNIT).as("shown_length");

    /** The keys of the sites that somebody coordinates, with a space between; null: none. */
    private static final Field<String> SITES = field(select(listAgg(SITE_COORDINATOR.SITE_ID.cast(VARCHAR), " ")
                            .withinGroupOrderBy(SITE_COORDINATOR.SITE_ID))
                    .from(SITE_COORDINATOR)
                    .where(SITE_COORDINATOR.MEMBER_ID.eq(MEMBER.ID)))
            .as("coordinated_sites");

    private static final int MOST_KEPT = 1_000;

    private final Database database;
    private final Audit audit;
    private final Clock clock;
    private final Map<String, Kept> kept = new ConcurrentHashMap<>();

    public SessionStore(Database database, Clock clock) {
        this.database = database;
        this.audit = new Audit(clock);
        this.clock = clock;
    }

    /** Opens a session and returns its token, which is given to the browser and stored nowhere. */
    public String open(UUID memberId) {
        return database.sql().transactionResult(inside -> open(inside.dsl(), memberId));
    }

    /** Opens a session within the caller's transaction. */
    public String open(DSLContext sql, UUID memberId) {
        OffsetDateTime now = audit.now();
        String token = Token.random();
        sql.deleteFrom(MEMBER_SESSION).where(MEMBER_SESSION.EXPIRES_AT.lt(now)).execute();
        sql.insertInto(MEMBER_SESSION)
                .set(MEMBER_SESSION.TOKEN_HASH, Token.hash(token))
                .set(MEMBER_SESSION.MEMBER_ID, memberId)
                .set(MEMBER_SESSION.CSRF_TOKEN, Token.random())
                .set(MEMBER_SESSION.STARTED_AT, now)
                .set(MEMBER_SESSION.LAST_SEEN_AT, now)
                .set(MEMBER_SESSION.EXPIRES_AT, now.plus(SessionCookie.LIFE))
                .execute();
        audit.write(sql, memberId, "sign in", "member", memberId, "");
        return token;
    }

    @Override
    public void end(String token, UUID memberId) {
        database.sql().transaction(inside -> {
            inside.dsl()
                    .deleteFrom(MEMBER_SESSION)
                    .where(MEMBER_SESSION.TOKEN_HASH.eq(Token.hash(token)))
                    .execute();
            audit.write(inside.dsl(), memberId, "sign out", "member", memberId, "");
        });
    }

    /** Signs a member out everywhere, within the caller's transaction. */
    public static void endAll(DSLContext sql, UUID memberId) {
        sql.deleteFrom(MEMBER_SESSION)
                .where(MEMBER_SESSION.MEMBER_ID.eq(memberId))
                .execute();
    }

    @Override
    public Optional<Visitor> visitor(String sessionToken) {
        String hash = Token.hash(sessionToken);
        OffsetDateTime now = audit.now();
        Kept last = kept.get(hash);
        if (last != null && isFresh(last, now)) {
            return Optional.of(visitor(last.row()));
        }
        // Counted before reading: a sign-out meanwhile makes what was read stale at once.
        long writes = database.writesBesideLooks();
        @Nullable Record row = read(hash, now);
        if (row == null) {
            kept.remove(hash);
            return Optional.empty();
        }
        // Once an hour is enough to know who is about, and spares a write for every page.
        if (isLongAgo(row, now) && haveRoom()) {
            prolong(hash, now);
            if (row.get(TABLET.ID) != null) {
                noteSeen(row.get(TABLET.ID), now);
            }
        }
        keep(hash, new Kept(writes, row));
        return Optional.of(visitor(row));
    }

    /** A full disk keeps nobody from reading. */
    private boolean haveRoom() {
        return database.room().map(room -> !room.isFull()).orElse(true);
    }

    /** A session as it was read when so much had been written. */
    private record Kept(long writes, Record row) {}

    /** Each page asks who is there; while nothing but looks is written, the answer stays what it was until it expires. */
    private boolean isFresh(Kept last, OffsetDateTime now) {
        return !database.isShared()
                && last.writes() == database.writesBesideLooks()
                && last.row().get(MEMBER_SESSION.EXPIRES_AT).isAfter(now)
                && !isLongAgo(last.row(), now);
    }

    private static boolean isLongAgo(Record row, OffsetDateTime now) {
        return row.get(MEMBER_SESSION.LAST_SEEN_AT).isBefore(now.minusHours(1));
    }

    private void keep(String hash, Kept session) {
        if (kept.size() >= MOST_KEPT) {
            kept.clear();
        }
        kept.put(hash, session);
    }

    private @Nullable Record read(String hash, OffsetDateTime now) {
        return database.sql()
                .select(
                        MEMBER.ID,
                        MEMBER.NAME,
                        MEMBER.CALLED,
                        MEMBER.ROLE,
                        SITES,
                        MEMBER.COUNTRY,
                        MEMBER.POSTCODE,
                        TEMPERATURE,
                        LENGTH,
                        GROUP_PROFILE.NAME,
                        GROUP_PROFILE.TIME_ZONE,
                        GROUP_PROFILE.SEASON,
                        TABLET.ID,
                        TABLET.NAME,
                        SITE.ID,
                        SITE.NAME,
                        MEMBER_SESSION.CSRF_TOKEN,
                        MEMBER_SESSION.LAST_SEEN_AT,
                        MEMBER_SESSION.EXPIRES_AT)
                .from(MEMBER_SESSION)
                .join(MEMBER)
                .on(MEMBER.ID.eq(MEMBER_SESSION.MEMBER_ID))
                .crossJoin(GROUP_PROFILE)
                .leftJoin(TABLET)
                .on(TABLET.ID.eq(MEMBER.ID), TABLET.ENDED_AT.isNull())
                .leftJoin(SITE)
                .on(SITE.ID.eq(TABLET.SITE_ID))
                .where(MEMBER_SESSION.TOKEN_HASH.eq(hash))
                .and(MEMBER_SESSION.EXPIRES_AT.gt(now))
                .and(MEMBER.LEFT_AT.isNull().or(TABLET.ID.isNotNull()))
                .fetchOne();
    }

    @Override
    public Optional<GroupFace> group() {
        return database.sql()
                .select(GROUP_PROFILE.NAME, GROUP_PROFILE.TIME_ZONE)
                .from(GROUP_PROFILE)
                .fetchOptional(row -> new GroupFace(row.value1(), ZoneId.of(row.value2())));
    }

    private void prolong(String hash, OffsetDateTime now) {
        database.sql()
                .update(MEMBER_SESSION)
                .set(MEMBER_SESSION.LAST_SEEN_AT, now)
                .set(MEMBER_SESSION.EXPIRES_AT, now.plus(SessionCookie.LIFE))
                .where(MEMBER_SESSION.TOKEN_HASH.eq(hash))
                .execute();
    }

    private static Reach reach(Record row) {
        if (row.get(MEMBER.ROLE).equals("coordinator")) {
            return Reach.WHOLE_GROUP;
        }
        @Nullable String sites = row.get(SITES);
        return sites == null
                ? Reach.NOWHERE
                : Reach.at(Stream.of(sites.split(" ")).map(UUID::fromString).toList());
    }

    /** Its sessions end, and when it was seen is asked for still. */
    private void noteSeen(UUID tablet, OffsetDateTime now) {
        database.sql()
                .update(TABLET)
                .set(TABLET.LAST_SEEN_AT, now)
                .where(TABLET.ID.eq(tablet))
                .execute();
    }

    private Visitor visitor(Record row) {
        ZoneId zone = ZoneId.of(row.get(GROUP_PROFILE.TIME_ZONE));
        return new Visitor(
                row.get(MEMBER.ID),
                row.get(MEMBER.NAME),
                row.get(MEMBER.CALLED),
                reach(row),
                row.get(MEMBER.COUNTRY),
                row.get(MEMBER.POSTCODE),
                Units.of(row.get(TEMPERATURE), row.get(LENGTH)),
                row.get(GROUP_PROFILE.NAME),
                zone,
                row.get(GROUP_PROFILE.SEASON),
                LocalDate.now(clock.withZone(zone)),
                row.get(MEMBER_SESSION.CSRF_TOKEN),
                tablet(row));
    }

    private static @Nullable TabletVisit tablet(Record row) {
        return row.get(TABLET.ID) == null
                ? null
                : new TabletVisit(row.get(TABLET.NAME), row.get(SITE.ID), row.get(SITE.NAME));
    }
}
