package warmshelf.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.SUBMISSION;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.db.Submission;
import warmshelf.testing.StoreContract;

abstract class SubmissionStoreContract extends StoreContract {
    private SubmissionStore submissions;
    private UUID ilse;

    @BeforeEach
    void moveIn() {
        submissions = new SubmissionStore(database());
        ilse = new MemberStore(database(), audit())
                .add(database().sql(), new NewMember("Ilse Brandt", "US", "55803", "hash"), true, "");
    }

    @Test
    void what_is_sent_twice_is_answered_once() throws Exception {
        assertThat(submissions.answer("one", ilse, () -> write("a"))).isTrue();
        assertThat(submissions.answer("one", ilse, () -> write("a"))).isFalse();
        assertThat(submissions.answer("two", ilse, () -> write("a"))).isTrue();

        assertThat(written("a")).isEqualTo(2);
    }

    @Test
    void a_form_that_wrote_nothing_is_answered_again() throws Exception {
        assertThat(submissions.answer("one", ilse, () -> {})).isTrue();

        assertThat(submissions.answer("one", ilse, () -> write("a"))).isTrue();
        assertThat(written("a")).isEqualTo(1);
    }

    @Test
    void what_was_rolled_back_may_be_sent_again() throws Exception {
        assertThatThrownBy(() -> submissions.answer(
                        "one",
                        ilse,
                        () -> database().sql().transaction(inside -> {
                            audit().write(inside.dsl(), ilse, "a", "thing", "1", "");
                            throw new IllegalStateException("the light went out");
                        })))
                .hasMessage("the light went out");

        assertThat(submissions.answer("one", ilse, () -> write("a"))).isTrue();
        assertThat(written("a")).isEqualTo(1);
    }

    @Test
    void one_form_may_write_in_several_transactions() throws Exception {
        boolean answered = submissions.answer("one", ilse, () -> {
            assertThatThrownBy(() -> database().sql().transaction(inside -> {
                        audit().write(inside.dsl(), ilse, "a", "thing", "1", "");
                        throw new IllegalStateException("the first place is taken");
                    }))
                    .isInstanceOf(IllegalStateException.class);
            write("a");
            write("a");
        });

        assertThat(answered).isTrue();
        assertThat(written("a")).isEqualTo(2);
        assertThat(submissions.answer("one", ilse, () -> write("a"))).isFalse();
    }

    /** Two nodes have no lock in common: both look, neither finds the form, both write. */
    @Test
    void of_two_that_both_began_only_one_writes() throws Exception {
        assertThat(atOnce("one", "one")).containsExactlyInAnyOrder(true, false);
        assertThat(written("a")).isEqualTo(1);
    }

    @Test
    void two_different_forms_at_once_both_write() throws Exception {
        assertThat(atOnce("one", "two")).containsExactly(true, true);
        assertThat(written("a")).isEqualTo(2);
    }

    @Test
    void what_nobody_sends_again_any_more_is_forgotten() throws Exception {
        submissions.answer("one", ilse, () -> write("a"));
        clock.advance(Duration.ofDays(31));
        submissions.answer("two", ilse, () -> write("a"));

        assertThat(database().sql().fetchValues(SUBMISSION.FINGERPRINT)).containsExactly("two");
    }

    private List<Boolean> atOnce(String first, String second) throws Exception {
        CountDownLatch bothLooked = new CountDownLatch(2);
        ExecutorService nodes = Executors.newFixedThreadPool(2);
        try {
            List<Future<Boolean>> answers = new ArrayList<>();
            for (String fingerprint : List.of(first, second)) {
                answers.add(nodes.submit(() -> submissions.answer(fingerprint, ilse, () -> {
                    bothLooked.countDown();
                    assertThat(bothLooked.await(10, TimeUnit.SECONDS)).isTrue();
                    write("a");
                })));
            }
            List<Boolean> answered = new ArrayList<>();
            for (Future<Boolean> answer : answers) {
                answered.add(answer.get(20, TimeUnit.SECONDS));
            }
            return answered;
        } finally {
            nodes.shutdownNow();
        }
    }

    @Test
    void outside_of_a_form_everything_is_written() {
        write("a");
        write("a");

        assertThat(written("a")).isEqualTo(2);
        assertThat(database().sql().fetchCount(SUBMISSION)).isZero();
    }

    @Test
    void the_form_is_no_longer_answered_once_its_work_is_done() throws Exception {
        Submission.<Exception>answering("one", ilse, () -> write("a"));

        write("a");

        assertThat(written("a")).isEqualTo(2);
    }

    private void write(String action) {
        database().sql().transaction(inside -> audit().write(inside.dsl(), ilse, action, "thing", "1", ""));
    }

    private int written(String action) {
        return database().sql().fetchCount(AUDIT_LINE, AUDIT_LINE.ACTION.eq(action));
    }
}
