package warmshelf.group;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.ZoneId;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Decision;
import warmshelf.testing.StoreContract;
import warmshelf.words.Units;

abstract class LinkStoreContract extends StoreContract {
    private LinkStore links;
    private MemberStore members;
    private SessionStore sessions;
    private AdmissionStore admissions;
    private UUID ilse;

    @BeforeEach
    void moveIn() {
        links = new LinkStore(database(), audit());
        members = new MemberStore(database(), audit());
        sessions = new SessionStore(database(), clock);
        admissions = new AdmissionStore(database(), members, links, sessions);
        ilse = members.add(database().sql(), new NewMember("Ilse Brandt", "US", "55803", "hash"), true, "");
        new GroupStore(database(), audit())
                .open(
                        database().sql(),
                        new GroupProfile("Hillside", ZoneId.of("America/Chicago"), Units.METRIC, "US", "55811", 2027),
                        ilse);
    }

    @Test
    void a_link_is_found_by_its_token_and_purpose_only() {
        String token = links.makeInvite(false, "a neighbour", ilse);

        Link link = links.find(LinkPurpose.JOIN, token).orElseThrow();

        assertThat(link.note()).isEqualTo("a neighbour");
        assertThat(link.madeBy()).isEqualTo("Ilse");
        assertThat(link.hash()).isNotEqualTo(token);
        assertThat(links.find(LinkPurpose.SIGN_IN, token)).isEmpty();
        assertThat(links.find(LinkPurpose.JOIN, link.hash())).isEmpty();
    }

    @Test
    void of_many_at_the_same_moment_one_uses_a_link_up() throws Exception {
        Link link =
                links.find(LinkPurpose.JOIN, links.makeInvite(false, "x", ilse)).orElseThrow();
        ExecutorService crowd = Executors.newFixedThreadPool(6);

        List<Future<Boolean>> used = crowd.invokeAll(Collections.nCopies(6, (Callable<Boolean>)
                () -> database().sql().transactionResult(inside -> links.use(inside.dsl(), link))));
        crowd.shutdown();

        assertThat(used).extracting(Future::get).containsOnlyOnce(true);
    }

    @Test
    void a_name_that_is_taken_leaves_the_link_open() {
        String token = links.makeInvite(false, "x", ilse);
        Link link = links.find(LinkPurpose.JOIN, token).orElseThrow();

        Decision<String> taken = admissions.join(link, new NewMember("ilse brandt", "US", "55803", "hash"));
        Decision<String> in = admissions.join(link, new NewMember("Tom Okafor", "US", "55803", "hash"));

        assertThat(taken.refusal()).contains(new GroupRefusal.NameTaken("ilse brandt"));
        assertThat(in).isInstanceOf(Decision.Done.class);
        assertThat(links.find(LinkPurpose.JOIN, token).orElseThrow().used()).isTrue();
    }

    @Test
    void a_session_shows_the_member_with_the_groups_units_until_it_ends() {
        String token = sessions.open(ilse);

        assertThat(sessions.visitor(token)).hasValueSatisfying(visitor -> {
            assertThat(visitor.name()).isEqualTo("Ilse Brandt");
            assertThat(visitor.units()).isEqualTo(Units.METRIC);
            assertThat(visitor.today()).isEqualTo("2027-03-01");
        });
        sessions.end(token, ilse);
        assertThat(sessions.visitor(token)).isEmpty();
    }

    @Test
    void the_day_is_the_groups_and_not_the_machines() {
        String token = sessions.open(ilse);

        // half past eleven at night in Duluth, when it is tomorrow already in UTC
        clock.set(java.time.Instant.parse("2027-03-02T05:30:00Z"));

        assertThat(sessions.visitor(token).orElseThrow().today()).isEqualTo("2027-03-01");
    }

    @Test
    void open_links_are_listed_until_used_withdrawn_or_expired() {
        links.makeInvite(false, "used", ilse);
        links.makeInvite(false, "withdrawn", ilse);
        links.makeInvite(false, "open", ilse);
        links.open().forEach(link -> {
            if (link.note().equals("used")) {
                admissions.join(link, new NewMember("Tom Okafor", "US", "55803", "hash"));
            } else if (link.note().equals("withdrawn")) {
                links.withdraw(link.hash(), ilse);
            }
        });

        assertThat(links.open()).extracting(Link::note).containsExactly("open");
        clock.advance(Duration.ofDays(14));
        assertThat(links.open()).isEmpty();
    }

    @Test
    void a_fresh_opening_link_voids_the_one_before() {
        String before = links.makeOpening();
        String fresh = links.makeOpening();

        assertThat(links.find(LinkPurpose.OPEN_GROUP, before).orElseThrow().open(audit().now()))
                .isFalse();
        assertThat(links.find(LinkPurpose.OPEN_GROUP, fresh).orElseThrow().open(audit().now()))
                .isTrue();
    }
}
