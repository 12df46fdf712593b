package warmshelf.passkey;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.PASSKEY;
import static warmshelf.db.generated.Tables.PASSKEY_CHALLENGE;

import java.time.Duration;
import java.time.ZoneId;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Decision;
import warmshelf.group.MemberStore;
import warmshelf.group.SessionStore;
import warmshelf.testing.Decided;
import warmshelf.testing.Person;
import warmshelf.testing.StoreContract;
import warmshelf.testing.TestGroup;

abstract class PasskeyStoreContract extends StoreContract {
    private static final ZoneId DULUTH = ZoneId.of("America/Chicago");
    private static final String DATA = "AQID";

    private PasskeyStore passkeys;
    private SessionStore sessions;
    private Person ilse;
    private Person tom;

    @BeforeEach
    void moveIn() {
        List<Person> cast = TestGroup.moveIn(database(), audit());
        ilse = cast.get(0);
        tom = cast.get(1);
        sessions = new SessionStore(database(), clock);
        passkeys = new PasskeyStore(database(), audit(), sessions);
    }

    @Test
    void a_question_is_answered_once_by_whom_it_was_put_to_and_within_five_minutes() {
        String toTom = passkeys.ask(tom.id(), "my phone");
        String atTheDoor = passkeys.ask(null, "");

        assertThat(passkeys.useUp("x", null)).isEmpty();
        assertThat(passkeys.useUp(atTheDoor, null)).contains("");
        assertThat(passkeys.useUp(atTheDoor, null)).isEmpty();
        assertThat(passkeys.useUp(toTom, tom.id())).contains("my phone");
        assertThat(passkeys.useUp(passkeys.ask(tom.id(), "a"), ilse.id())).isEmpty();
        assertThat(passkeys.useUp(passkeys.ask(tom.id(), "a"), null)).isEmpty();
        String late = passkeys.ask(null, "");
        clock.advance(Duration.ofMinutes(6));
        assertThat(passkeys.useUp(late, null)).isEmpty();
        passkeys.ask(null, "");
        assertThat(database().sql().fetchCount(PASSKEY_CHALLENGE)).isEqualTo(1);
    }

    @Test
    void of_many_answers_at_the_same_moment_one_counts() throws Exception {
        String challenge = passkeys.ask(null, "");
        ExecutorService crowd = Executors.newFixedThreadPool(6);

        List<Future<Optional<String>>> used = crowd.invokeAll(
                Collections.nCopies(6, (Callable<Optional<String>>) () -> passkeys.useUp(challenge, null)));
        crowd.shutdown();

        assertThat(used).extracting(Future::get).containsOnlyOnce(Optional.of(""));
    }

    @Test
    void a_key_signs_its_member_in_and_its_count_goes_on() {
        UUID id = add(tom, "my phone", "abc");

        PasskeyStore.Kept kept = passkeys.find("abc").orElseThrow();
        String session = Decided.done(passkeys.open(kept, 8));

        assertThat(sessions.visitor(session).orElseThrow().memberId()).isEqualTo(tom.id());
        assertThat(kept.id()).isEqualTo(id);
        assertThat(passkeys.find("abc").orElseThrow().key().signCount()).isEqualTo(8);
        assertThat(passkeys.open(kept, 8))
                .as("another was quicker with the same count")
                .isInstanceOf(Decision.Refused.class);
        assertThat(passkeys.of(tom.id(), DULUTH)).singleElement().satisfies(passkey -> {
            assertThat(passkey.name()).isEqualTo("my phone");
            assertThat(passkey.madeOn()).isEqualTo("2027-03-01");
            assertThat(passkey.lastUsedOn()).isEqualTo("2027-03-01");
        });
    }

    @Test
    void one_that_is_ended_signs_nobody_in_and_all_sessions_but_a_new_one_are_over() {
        UUID id = add(tom, "my phone", "abc");
        PasskeyStore.Kept kept = passkeys.find("abc").orElseThrow();
        String lost = Decided.done(passkeys.open(kept, 8));

        assertThat(passkeys.end(id, ilse.id())).isInstanceOf(Decision.Missing.class);
        PasskeyStore.Ended ended = Decided.done(passkeys.end(id, tom.id()));

        assertThat(ended.name()).isEqualTo("my phone");
        assertThat(passkeys.find("abc")).isEmpty();
        assertThat(passkeys.open(kept, 9)).isInstanceOf(Decision.Refused.class);
        assertThat(sessions.visitor(lost)).isEmpty();
        assertThat(sessions.visitor(ended.session())).isPresent();
    }

    @Test
    void whoever_leaves_leaves_no_key_behind_that_would_work_on_their_return() {
        add(tom, "my phone", "abc");
        MemberStore members = new MemberStore(database(), audit());

        members.leave(database().sql(), tom.id(), ilse.id());
        members.comeBack(tom.id(), ilse.id());

        assertThat(passkeys.find("abc")).isEmpty();
        assertThat(database().sql().fetchCount(PASSKEY)).isZero();
    }

    @Test
    void a_key_is_one_members_and_nobody_has_more_than_twelve() {
        add(tom, "my phone", "abc");

        assertThat(passkeys.add(ilse.id(), "hers", new PasskeyCheck.Key("abc", DATA, 0))
                        .refusal())
                .contains(new PasskeyRefusal.NotAdded());
        for (int i = 1; i < PasskeyStore.MOST; i++) {
            add(tom, "phone " + i, "key" + i);
        }
        assertThat(passkeys.add(tom.id(), "one more", new PasskeyCheck.Key("more", DATA, 0))
                        .refusal())
                .contains(new PasskeyRefusal.Enough(PasskeyStore.MOST));
    }

    private UUID add(Person person, String name, String credential) {
        return Decided.done(passkeys.add(person.id(), name, new PasskeyCheck.Key(credential, DATA, 7)));
    }
}
