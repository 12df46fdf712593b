package warmshelf.privacy;

import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.GROUP_PROFILE;
import static warmshelf.db.generated.Tables.INCOMING_TABLE;
import static warmshelf.db.generated.Tables.LEAVING;
import static warmshelf.db.generated.Tables.LEAVING_THING;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PHOTO;
import static warmshelf.db.generated.Tables.PROGRAM_ANSWER;
import static warmshelf.db.generated.Tables.PROGRAM_TOKEN;
import static warmshelf.db.generated.Tables.PUSH_ADDRESS;
import static warmshelf.db.generated.Tables.PUSH_NOTICE;
import static warmshelf.db.generated.Tables.THERMOMETER;
import static warmshelf.db.generated.Tables.THERMOMETER_NIGHT;
import static warmshelf.privacy.PrivacySentences.SAY;

import java.time.LocalDate;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record2;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.db.PersonalTrace;
import warmshelf.db.PersonalTraces;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.frost.evidence.VersionStore;
import warmshelf.group.CalledStore;
import warmshelf.group.Member;
import warmshelf.group.MemberStore;
import warmshelf.leaving.LeavingStore;

/** Takes a person out of the group's records, all or nothing, so that only what happened stays, without a name. */
final class ErasureStore {
    private static final String NO_PASSPHRASE = "erased";

    private final DSLContext sql;
    private final Audit audit;
    private final MemberStore members;
    private final LeavingStore leavings;

    ErasureStore(Database database, Audit audit, MemberStore members, LeavingStore leavings) {
        this.sql = database.sql();
        this.audit = audit;
        this.members = members;
        this.leavings = leavings;
    }

    /**
     * Erases a person; a no for the only coordinator who names nobody else, and when something of theirs changed at the same moment.
     *
     * @param by who erases: the person, or a coordinator
     */
    Decision<UUID> erase(Member member, ErasureWish wish, LocalDate today, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            held(tx, member);
            if (wish.successor() != null) {
                members.makeCoordinator(tx, wish.successor(), by);
            }
            if (member.present()) {
                members.keepACoordinator(tx, member.id());
            }
            MentionStore.Mentions mentions = MentionStore.of(tx, member);
            leavings.giveUpAll(tx, member, today, by);
            emptyNotes(tx, member.id());
            if (wish.photosToo()) {
                takePhotosOut(tx, member.id(), by);
            }
            audit.write(tx, by, "erase", "member", member.id(), "");
            forget(tx, member.id());
            overwrite(tx, member.id());
            CalledStore.renew(tx);
            MentionStore.replace(tx, mentions, SAY.somebody());
            // after all lines are written, because a line of a form that counts once writes there
            deleteRows(tx, member.id());
            VersionStore.grow(tx);
            return member.id();
        }));
    }

    private static void held(DSLContext tx, Member member) {
        boolean there = tx.select(MEMBER.ID)
                .from(MEMBER)
                .where(MEMBER.ID.eq(member.id()), MEMBER.ERASED_AT.isNull())
                .forUpdate()
                .fetchOptional()
                .isPresent();
        if (!there) {
            throw Declined.gone(new PrivacyRefusal.ErasedAlready());
        }
    }

    private static void emptyNotes(DSLContext tx, UUID person) {
        for (PersonalTraces.Note note : PersonalTraces.notes()) {
            tx.update(note.writer().getTable())
                    .set((Field<String>) note.text(), "")
                    .where(note.rowsOf(person))
                    .execute();
        }
    }

    /** As {@code PhotoStore} takes one out: a row without a byte stays, so that a phone does not send it again. */
    private void takePhotosOut(DSLContext tx, UUID person, UUID by) {
        tx.update(PHOTO)
                .set(PHOTO.JPEG, new byte[0])
                .set(PHOTO.REMOVED_BY, by)
                .set(PHOTO.REMOVED_AT, audit.now())
                .where(PHOTO.ADDED_BY.eq(person), PHOTO.REMOVED_AT.isNull())
                .execute();
    }

    private static void forget(DSLContext tx, UUID person) {
        tx.update(AUDIT_LINE)
                .set(AUDIT_LINE.DETAIL, "")
                .setNull(AUDIT_LINE.TOKEN_NAME)
                .where(
                        AUDIT_LINE
                                .MEMBER_ID
                                .eq(person)
                                .or(AUDIT_LINE.SUBJECT.eq("member").and(AUDIT_LINE.SUBJECT_ID.eq(person.toString()))),
                        AUDIT_LINE.DETAIL.ne("").or(AUDIT_LINE.TOKEN_NAME.isNotNull()))
                .execute();
    }

    private void overwrite(DSLContext tx, UUID person) {
        int before = tx.fetchCount(MEMBER, MEMBER.ERASED_AT.isNotNull());
        String name = SAY.formerMember(before + 1);
        Record2<String, String> home = tx.select(GROUP_PROFILE.COUNTRY, GROUP_PROFILE.HOME_POSTCODE)
                .from(GROUP_PROFILE)
                .fetchSingle();
        tx.update(MEMBER)
                .set(MEMBER.NAME, name)
                .set(MEMBER.NAME_KEY, Member.key(name))
                .set(MEMBER.CALLED, name)
                .set(MEMBER.ROLE, "member")
                .set(MEMBER.COUNTRY, home.value1())
                .set(MEMBER.POSTCODE, home.value2())
                .set(MEMBER.PASSPHRASE_HASH, NO_PASSPHRASE)
                .setNull(MEMBER.TEMPERATURE_UNIT)
                .setNull(MEMBER.LENGTH_UNIT)
                .set(MEMBER.ERASED_AT, audit.now())
                .set(MEMBER.VERSION, MEMBER.VERSION.plus(1))
                .where(MEMBER.ID.eq(person))
                .execute();
    }

    private static void deleteRows(DSLContext tx, UUID person) {
        tx.deleteFrom(LEAVING_THING)
                .where(LEAVING_THING.LEAVING_ID.in(
                        tx.select(LEAVING.ID).from(LEAVING).where(LEAVING.MEMBER_ID.eq(person))))
                .execute();
        tx.deleteFrom(PROGRAM_ANSWER)
                .where(PROGRAM_ANSWER.TOKEN_ID.in(
                        tx.select(PROGRAM_TOKEN.ID).from(PROGRAM_TOKEN).where(PROGRAM_TOKEN.MEMBER_ID.eq(person))))
                .execute();
        tx.deleteFrom(PUSH_NOTICE)
                .where(PUSH_NOTICE.ADDRESS_ID.in(tx.select(PUSH_ADDRESS.ID)
                        .from(PUSH_ADDRESS)
                        .where(PUSH_ADDRESS.MEMBER_ID.eq(person).or(PUSH_ADDRESS.ADDED_BY.eq(person)))))
                .execute();
        var hung = tx.select(THERMOMETER.ID).from(THERMOMETER).where(THERMOMETER.MEMBER_ID.eq(person));
        tx.deleteFrom(THERMOMETER_NIGHT)
                .where(THERMOMETER_NIGHT.THERMOMETER_ID.in(hung))
                .execute();
        tx.update(INCOMING_TABLE)
                .setNull(INCOMING_TABLE.THERMOMETER_ID)
                .where(INCOMING_TABLE.THERMOMETER_ID.in(hung))
                .execute();
        for (PersonalTrace trace : PersonalTraces.all()) {
            if (trace.becomes() == PersonalTrace.Becomes.GOES) {
                tx.deleteFrom(trace.table()).where(trace.rowsOf(person)).execute();
            } else if (trace.becomes() == PersonalTrace.Becomes.EMPTIED) {
                tx.update(trace.table())
                        .setNull((Field<UUID>) trace.column())
                        .where(trace.rowsOf(person))
                        .execute();
            }
        }
    }
}
