package warmshelf.group;

import static warmshelf.db.generated.Tables.ACCESS_LINK;
import static warmshelf.db.generated.Tables.MEMBER;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.SelectOnConditionStep;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** The links that let people in. */
public final class LinkStore {
    private static final int ONCE = 1;
    /** A link with any number of uses is for a demo, which may be left running for weeks. */
    private static final Duration LASTING = Duration.ofDays(60);

    private final Database database;
    private final Audit audit;

    public LinkStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
    }

    /** Makes the one link that opens the group; earlier ones no longer do. Returns its token. */
    public String makeOpening() {
        return database.sql().transactionResult(inside -> {
            DSLContext sql = inside.dsl();
            sql.update(ACCESS_LINK)
                    .set(ACCESS_LINK.EXPIRES_AT, audit.now())
                    .where(ACCESS_LINK.PURPOSE.eq(LinkPurpose.OPEN_GROUP.stored()))
                    .and(ACCESS_LINK.EXPIRES_AT.gt(audit.now()))
                    .execute();
            return make(sql, LinkPurpose.OPEN_GROUP, true, null, "the first coordinator", null, ONCE);
        });
    }

    /** Makes a link by which one person joins. Returns its token. */
    public String makeInvite(boolean coordinator, String note, UUID by) {
        return database.sql().transactionResult(inside -> makeInvite(inside.dsl(), coordinator, note, by));
    }

    /** Makes a link for each of several members to come, all or none. Returns their tokens by name, in the order of the names. */
    Map<String, String> makeInvites(List<String> names, UUID by) {
        return database.sql().transactionResult(inside -> {
            Map<String, String> tokens = new LinkedHashMap<>();
            names.forEach(name -> tokens.put(name, makeInvite(inside.dsl(), false, name, by)));
            return tokens;
        });
    }

    /** The same within the caller's transaction. */
    public String makeInvite(DSLContext within, boolean coordinator, String note, UUID by) {
        return make(within, LinkPurpose.JOIN, coordinator, null, note, by, ONCE);
    }

    /**
     * Makes a link that signs a member in. Returns its token.
     *
     * @param uses null: any number of times until it expires
     */
    public String makeSignIn(Member member, @Nullable UUID by, @Nullable Integer uses) {
        return database.sql()
                .transactionResult(inside -> make(
                        inside.dsl(), LinkPurpose.SIGN_IN, member.coordinator(), member.id(), member.name(), by, uses));
    }

    /** Makes the one link by which a tablet comes in, within the caller's transaction; earlier ones no longer do. Returns its token. */
    public String makeTablet(DSLContext within, UUID tablet, String name, UUID by) {
        withdrawAllOf(within, tablet, audit.now());
        return make(within, LinkPurpose.TABLET, false, tablet, name, by, ONCE);
    }

    public Optional<Link> find(LinkPurpose purpose, String token) {
        return links(database.sql())
                .where(ACCESS_LINK.TOKEN_HASH.eq(Token.hash(token)))
                .and(ACCESS_LINK.PURPOSE.eq(purpose.stored()))
                .fetchOptional(LinkStore::link);
    }

    /** Links for joining and signing in that still let someone in, the newest first. */
    public List<Link> open() {
        return links(database.sql())
                .where(ACCESS_LINK.PURPOSE.in(LinkPurpose.JOIN.stored(), LinkPurpose.SIGN_IN.stored()))
                .and(ACCESS_LINK.EXPIRES_AT.gt(audit.now()))
                .and(ACCESS_LINK.USES_LEFT.isNull().or(ACCESS_LINK.USES_LEFT.gt(0)))
                .orderBy(ACCESS_LINK.MADE_AT.desc(), ACCESS_LINK.TOKEN_HASH)
                .fetch(LinkStore::link);
    }

    /** For whom the link was made by which a member joined, where that is not the name they joined under. */
    Map<UUID, String> madeForAnother() {
        return database
                .sql()
                .select(MEMBER.ID, MEMBER.NAME, ACCESS_LINK.NOTE)
                .from(ACCESS_LINK)
                .join(MEMBER)
                .on(MEMBER.ID.eq(ACCESS_LINK.USED_BY))
                .where(ACCESS_LINK.PURPOSE.eq(LinkPurpose.JOIN.stored()))
                .fetch()
                .stream()
                .filter(row -> !Member.key(row.value2()).equals(Member.key(row.value3())))
                .collect(Collectors.toMap(row -> row.value1(), row -> row.value3(), (first, second) -> first));
    }

    /**
     * Uses a link up within the caller's transaction; false when somebody was quicker or it has expired. One statement
     * decides, so of two people with one link only one gets in.
     */
    public boolean use(DSLContext sql, Link link) {
        return sql.update(ACCESS_LINK)
                        .set(ACCESS_LINK.USES_LEFT, ACCESS_LINK.USES_LEFT.minus(1))
                        .set(ACCESS_LINK.USED_AT, audit.now())
                        .where(ACCESS_LINK.TOKEN_HASH.eq(link.hash()))
                        .and(ACCESS_LINK.EXPIRES_AT.gt(audit.now()))
                        .and(ACCESS_LINK.USES_LEFT.isNull().or(ACCESS_LINK.USES_LEFT.gt(0)))
                        .execute()
                == 1;
    }

    /** Notes who came in by a link, within the caller's transaction. */
    public void noteUser(DSLContext sql, Link link, UUID memberId) {
        sql.update(ACCESS_LINK)
                .set(ACCESS_LINK.USED_BY, memberId)
                .where(ACCESS_LINK.TOKEN_HASH.eq(link.hash()))
                .execute();
        audit.write(
                sql,
                memberId,
                "use link",
                "access_link",
                link.hash(),
                link.purpose().stored());
    }

    /** Closes a link; false when it was not open any more. */
    public boolean withdraw(String hash, UUID by) {
        return database.sql().transactionResult(inside -> {
            OffsetDateTime now = audit.now();
            boolean withdrawn = inside.dsl()
                            .update(ACCESS_LINK)
                            .set(ACCESS_LINK.EXPIRES_AT, now)
                            .where(ACCESS_LINK.TOKEN_HASH.eq(hash))
                            .and(ACCESS_LINK.EXPIRES_AT.gt(now))
                            .and(ACCESS_LINK.USES_LEFT.isNull().or(ACCESS_LINK.USES_LEFT.gt(0)))
                            .execute()
                    == 1;
            if (withdrawn) {
                audit.write(inside.dsl(), by, "withdraw link", "access_link", hash, "");
            }
            return withdrawn;
        });
    }

    /** Closes what someone who leaves, or stops coordinating, has made for others or could come in by. */
    public static void withdrawAllOf(DSLContext sql, UUID memberId, OffsetDateTime now) {
        sql.update(ACCESS_LINK)
                .set(ACCESS_LINK.EXPIRES_AT, now)
                .where(ACCESS_LINK.MADE_BY.eq(memberId).or(ACCESS_LINK.MEMBER_ID.eq(memberId)))
                .and(ACCESS_LINK.EXPIRES_AT.gt(now))
                .execute();
    }

    private String make(
            DSLContext sql,
            LinkPurpose purpose,
            boolean coordinator,
            @Nullable UUID memberId,
            String note,
            @Nullable UUID by,
            @Nullable Integer uses) {
        String token = Token.random();
        sql.insertInto(ACCESS_LINK)
                .set(ACCESS_LINK.TOKEN_HASH, Token.hash(token))
                .set(ACCESS_LINK.PURPOSE, purpose.stored())
                .set(ACCESS_LINK.ROLE, coordinator ? "coordinator" : "member")
                .set(ACCESS_LINK.MEMBER_ID, memberId)
                .set(ACCESS_LINK.NOTE, note)
                .set(ACCESS_LINK.MADE_BY, by)
                .set(ACCESS_LINK.MADE_AT, audit.now())
                .set(ACCESS_LINK.EXPIRES_AT, audit.now().plus(uses == null ? LASTING : purpose.life()))
                .set(ACCESS_LINK.USES_LEFT, uses)
                .execute();
        audit.write(sql, by, "make link", "access_link", Token.hash(token), purpose.stored() + ": " + note);
        return token;
    }

    private static SelectOnConditionStep<Record> links(DSLContext sql) {
        return sql.select(ACCESS_LINK.fields())
                .select(MEMBER.CALLED)
                .from(ACCESS_LINK)
                .leftJoin(MEMBER)
                .on(MEMBER.ID.eq(ACCESS_LINK.MADE_BY));
    }

    private static Link link(Record row) {
        return new Link(
                row.get(ACCESS_LINK.TOKEN_HASH),
                LinkPurpose.of(row.get(ACCESS_LINK.PURPOSE)),
                row.get(ACCESS_LINK.ROLE).equals("coordinator"),
                row.get(ACCESS_LINK.MEMBER_ID),
                row.get(ACCESS_LINK.NOTE),
                row.get(MEMBER.CALLED),
                row.get(ACCESS_LINK.EXPIRES_AT),
                row.get(ACCESS_LINK.USES_LEFT));
    }
}
