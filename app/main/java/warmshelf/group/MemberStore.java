package warmshelf.group;

import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.GROUP_PROFILE;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PASSKEY;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.RowCountQuery;
import org.jooq.exception.IntegrityConstraintViolationException;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.db.generated.tables.records.GroupProfileRecord;
import warmshelf.db.generated.tables.records.MemberRecord;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;

/** The people of the group, those who have left included: their sowings stay. */
public final class MemberStore {
    /** People, and no tablets: those have a row so that what they keep has an author. */
    private static final Condition PEOPLE = MEMBER.ROLE.ne("tablet");

    private static final String CHANGE = "change own settings";
    private static final String RENAME = "rename";

    private final Database database;
    private final Audit audit;

    public MemberStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
    }

    /** Everyone by name, those present first. */
    public List<Member> all() {
        return database.sql()
                .selectFrom(MEMBER)
                .where(PEOPLE)
                .orderBy(MEMBER.LEFT_AT.isNotNull(), MEMBER.NAME_KEY)
                .fetch(MemberStore::member);
    }

    /** What those who coordinate the group now are called, by name. */
    public List<String> coordinatorNames() {
        return database.sql()
                .select(MEMBER.CALLED)
                .from(MEMBER)
                .where(MEMBER.ROLE.eq("coordinator"))
                .and(MEMBER.LEFT_AT.isNull())
                .orderBy(MEMBER.NAME_KEY)
                .fetch(MEMBER.CALLED);
    }

    public Optional<Member> find(UUID id) {
        return database.sql().selectFrom(MEMBER).where(MEMBER.ID.eq(id), PEOPLE).fetchOptional(MemberStore::member);
    }

    /** Someone present, by name in any capitals. */
    public Optional<Member> named(String name) {
        return database.sql()
                .selectFrom(MEMBER)
                .where(MEMBER.NAME_KEY.eq(Member.key(name)))
                .and(MEMBER.LEFT_AT.isNull())
                .fetchOptional(MemberStore::member);
    }

    public @Nullable String passphraseHash(UUID id) {
        return database.sql()
                .select(MEMBER.PASSPHRASE_HASH)
                .from(MEMBER)
                .where(MEMBER.ID.eq(id))
                .fetchOne(MEMBER.PASSPHRASE_HASH);
    }

    /**
     * Adds a person within the caller's transaction.
     *
     * @throws Declined when the name is taken; the transaction is to end then
     */
    public UUID add(DSLContext sql, NewMember person, boolean coordinator, String how) {
        CalledStore.oneByOne(sql);
        UUID id = UUID.randomUUID();
        uniquely(
                person.name(),
                sql.insertInto(MEMBER)
                        .set(MEMBER.ID, id)
                        .set(MEMBER.NAME, person.name())
                        .set(MEMBER.NAME_KEY, Member.key(person.name()))
                        .set(MEMBER.CALLED, person.name())
                        .set(MEMBER.ROLE, coordinator ? "coordinator" : "member")
                        .set(MEMBER.COUNTRY, person.country())
                        .set(MEMBER.POSTCODE, person.postcode())
                        .set(MEMBER.PASSPHRASE_HASH, person.passphraseHash())
                        .set(MEMBER.JOINED_AT, audit.now())
                        .set(MEMBER.VERSION, 1));
        CalledStore.renew(sql, person.name());
        audit.write(sql, id, "join", "member", id, how);
        return id;
    }

    /**
     * Adds the row of a tablet at a rack within the caller's transaction, so that what it keeps has an author. It has left from the
     * start, because whoever is present is asked for in many places; no person has its key, and no passphrase fits.
     *
     * @param author as others read it
     */
    public UUID addTablet(DSLContext sql, String author) {
        UUID id = UUID.randomUUID();
        GroupProfileRecord group = sql.selectFrom(GROUP_PROFILE).fetchSingle();
        sql.insertInto(MEMBER)
                .set(MEMBER.ID, id)
                .set(MEMBER.NAME, author)
                .set(MEMBER.NAME_KEY, id.toString())
                .set(MEMBER.CALLED, author)
                .set(MEMBER.ROLE, "tablet")
                .set(MEMBER.COUNTRY, group.getCountry())
                .set(MEMBER.POSTCODE, group.getHomePostcode())
                .set(MEMBER.PASSPHRASE_HASH, "")
                .set(MEMBER.JOINED_AT, audit.now())
                .set(MEMBER.LEFT_AT, audit.now())
                .set(MEMBER.VERSION, 1)
                .execute();
        return id;
    }

    private static int uniquely(String name, RowCountQuery write) {
        try {
            return write.execute();
        } catch (IntegrityConstraintViolationException sameName) {
            throw Declined.refused(new GroupRefusal.NameTaken(name));
        }
    }

    /** Makes a member a coordinator or back; a no when nobody would be left to coordinate. */
    public Decision<UUID> setCoordinator(UUID id, boolean coordinator, UUID by) {
        return Decision.of(() -> database.sql().transactionResult(inside -> {
            DSLContext sql = inside.dsl();
            if (coordinator) {
                SiteCoordinatorStore.end(sql, id);
                setRole(sql, id, true, by);
            } else {
                makePlain(sql, id, by);
            }
            return id;
        }));
    }

    /**
     * Makes somebody a plain member within the caller's transaction.
     *
     * @throws Declined when nobody would be left to coordinate the whole group
     */
    void makePlain(DSLContext sql, UUID id, UUID by) {
        keepACoordinator(sql, id);
        setRole(sql, id, false, by);
        SiteCoordinatorStore.end(sql, id);
        LinkStore.withdrawAllOf(sql, id, audit.now());
    }

    /** Makes somebody present a coordinator within the caller's transaction. */
    public void makeCoordinator(DSLContext sql, UUID id, UUID by) {
        SiteCoordinatorStore.end(sql, id);
        setRole(sql, id, true, by);
    }

    private void setRole(DSLContext sql, UUID id, boolean coordinator, UUID by) {
        sql.update(MEMBER)
                .set(MEMBER.ROLE, coordinator ? "coordinator" : "member")
                .set(MEMBER.VERSION, MEMBER.VERSION.plus(1))
                .where(MEMBER.ID.eq(id))
                .and(MEMBER.LEFT_AT.isNull())
                .execute();
        audit.write(sql, by, coordinator ? "make coordinator" : "make member", "member", id, "");
    }

    /** Notes, within the caller's transaction, that someone has left, and signs them out everywhere. */
    public void leave(DSLContext sql, UUID id, UUID by) {
        CalledStore.oneByOne(sql);
        sql.update(MEMBER)
                .set(MEMBER.LEFT_AT, audit.now())
                .set(MEMBER.VERSION, MEMBER.VERSION.plus(1))
                .where(MEMBER.ID.eq(id))
                .and(MEMBER.LEFT_AT.isNull())
                .execute();
        CalledStore.renew(sql, name(sql, id));
        sql.deleteFrom(PASSKEY).where(PASSKEY.MEMBER_ID.eq(id)).execute();
        SessionStore.endAll(sql, id);
        LinkStore.withdrawAllOf(sql, id, audit.now());
        audit.write(sql, by, "leave", "member", id, "");
    }

    /** Takes back someone who was marked as left, as a plain member. */
    public void comeBack(UUID id, UUID by) {
        database.sql().transaction(inside -> {
            SiteCoordinatorStore.end(inside.dsl(), id);
            comeBack(inside.dsl(), id, false, by);
        });
    }

    /** Takes back someone who was marked as left, within the caller's transaction. */
    public void comeBack(DSLContext sql, UUID id, boolean coordinator, UUID by) {
        CalledStore.oneByOne(sql);
        sql.update(MEMBER)
                .setNull(MEMBER.LEFT_AT)
                .set(MEMBER.ROLE, coordinator ? "coordinator" : "member")
                .set(MEMBER.VERSION, MEMBER.VERSION.plus(1))
                .where(MEMBER.ID.eq(id), MEMBER.LEFT_AT.isNotNull(), MEMBER.ERASED_AT.isNull())
                .execute();
        CalledStore.renew(sql, name(sql, id));
        audit.write(sql, by, "come back", "member", id, "");
    }

    /** Changes one's own entry if it is still the version that was read. */
    Decision<UUID> change(UUID id, int version, OwnSettings settings) {
        return Decision.of(() -> database.sql().transactionResult(inside -> {
            change(inside.dsl(), id, version, settings);
            return id;
        }));
    }

    private void change(DSLContext sql, UUID id, int version, OwnSettings settings) {
        CalledStore.oneByOne(sql);
        String before = name(sql, id);
        int changed = uniquely(
                settings.name(),
                sql.update(MEMBER)
                        .set(MEMBER.NAME, settings.name())
                        .set(MEMBER.NAME_KEY, Member.key(settings.name()))
                        .set(MEMBER.COUNTRY, settings.country())
                        .set(MEMBER.POSTCODE, settings.postcode())
                        .set(MEMBER.TEMPERATURE_UNIT, settings.temperatureUnit())
                        .set(MEMBER.LENGTH_UNIT, settings.lengthUnit())
                        .set(MEMBER.VERSION, version + 1)
                        .where(MEMBER.ID.eq(id))
                        .and(MEMBER.VERSION.eq(version)));
        if (changed == 0) {
            throw Declined.overtaken(new GroupRefusal.SettingsChanged());
        }
        CalledStore.renew(sql, before, settings.name());
        if (!before.equals(settings.name())) {
            audit.write(sql, id, RENAME, "member", id, before);
        }
        audit.write(sql, id, CHANGE, "member", id, settings.audited());
    }

    private static String name(DSLContext sql, UUID id) {
        return sql.select(MEMBER.NAME).from(MEMBER).where(MEMBER.ID.eq(id)).fetchSingle(MEMBER.NAME);
    }

    /** The names that somebody went by before, as far as it was written down, within the caller's transaction. */
    public static Set<String> earlierNames(DSLContext sql, Member member) {
        Set<String> names = new LinkedHashSet<>();
        sql.select(AUDIT_LINE.ACTION, AUDIT_LINE.DETAIL)
                .from(AUDIT_LINE)
                .where(
                        AUDIT_LINE.SUBJECT.eq("member"),
                        AUDIT_LINE.SUBJECT_ID.eq(member.id().toString()),
                        AUDIT_LINE.ACTION.in(RENAME, CHANGE),
                        AUDIT_LINE.DETAIL.ne(""))
                .forEach(line -> {
                    if (line.value1().equals(RENAME)) {
                        names.add(line.value2());
                    } else {
                        OwnSettings.nameIn(line.value2()).ifPresent(names::add);
                    }
                });
        // another may have the name by now
        names.removeIf(name -> sql.fetchExists(MEMBER, MEMBER.NAME_KEY.eq(Member.key(name))));
        return names;
    }

    /** Sets a new passphrase within the caller's transaction and signs the member out everywhere. */
    public void setPassphrase(DSLContext sql, UUID id, String hash) {
        sql.update(MEMBER)
                .set(MEMBER.PASSPHRASE_HASH, hash)
                .where(MEMBER.ID.eq(id))
                .execute();
        SessionStore.endAll(sql, id);
        audit.write(sql, id, "change passphrase", "member", id, "");
    }

    /**
     * Sees to it that the whole group has a coordinator without this one, and holds its row until the transaction ends.
     *
     * @throws Declined when it would have none
     */
    public void keepACoordinator(DSLContext sql, UUID id) {
        // so that two coordinators cannot each let the other go at the same moment
        CalledStore.oneByOne(sql);
        Map<UUID, String> coordinators = sql.select(MEMBER.ID, MEMBER.NAME)
                .from(MEMBER)
                .where(MEMBER.ROLE.eq("coordinator"))
                .and(MEMBER.LEFT_AT.isNull())
                .fetchMap(MEMBER.ID, MEMBER.NAME);
        String name = coordinators.get(id);
        if (name != null && coordinators.size() == 1) {
            throw Declined.refused(new GroupRefusal.OnlyCoordinator(name));
        }
    }

    private static Member member(MemberRecord row) {
        return new Member(
                row.getId(),
                row.getName(),
                row.getCalled(),
                row.getRole().equals("coordinator"),
                row.getCountry(),
                row.getPostcode(),
                row.getTemperatureUnit(),
                row.getLengthUnit(),
                row.getJoinedAt(),
                row.getLeftAt(),
                row.getErasedAt() != null,
                row.getVersion());
    }
}
