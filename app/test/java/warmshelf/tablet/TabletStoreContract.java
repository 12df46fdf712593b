package warmshelf.tablet;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.MEMBER_SESSION;
import static warmshelf.db.generated.Tables.SITE;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.ZoneId;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Decision;
import warmshelf.group.AdmissionStore;
import warmshelf.group.CalledStore;
import warmshelf.group.Link;
import warmshelf.group.LinkPurpose;
import warmshelf.group.LinkStore;
import warmshelf.group.MemberStore;
import warmshelf.group.SessionStore;
import warmshelf.testing.Decided;
import warmshelf.testing.Person;
import warmshelf.testing.StoreContract;
import warmshelf.testing.TestGroup;
import warmshelf.web.TabletVisit;
import warmshelf.web.Visitor;

abstract class TabletStoreContract extends StoreContract {
    private static final ZoneId DULUTH = ZoneId.of("America/Chicago");

    private TabletStore tablets;
    private LinkStore links;
    private MemberStore members;
    private SessionStore sessions;
    private Person ilse;
    private UUID cellar;

    @BeforeEach
    void moveIn() {
        ilse = TestGroup.moveIn(database(), audit()).get(0);
        links = new LinkStore(database(), audit());
        members = new MemberStore(database(), audit());
        sessions = new SessionStore(database(), clock);
        tablets = new TabletStore(
                database(), audit(), members, links, new AdmissionStore(database(), members, links, sessions));
        cellar = site("Hall cellar");
    }

    @Test
    void a_tablet_comes_in_by_its_link_once_and_is_the_tablet_of_its_site() {
        Link link = link(made("Cellar"));

        String session = open(link);

        Visitor visitor = sessions.visitor(session).orElseThrow();
        assertThat(visitor.tablet()).isEqualTo(new TabletVisit("Cellar", cellar, "Hall cellar"));
        assertThat(visitor.called()).isEqualTo("the tablet Cellar");
        assertThat(visitor.coordinator()).isFalse();
        assertThat(tablets.open(link, visitor.memberId())).isInstanceOf(Decision.Gone.class);
        assertThat(tablets.all(DULUTH)).singleElement().satisfies(tablet -> {
            assertThat(tablet.lastSeen()).isEqualTo("2027-03-01T09:00");
            assertThat(tablet.opens()).isTrue();
            assertThat(tablet.madeBy()).isEqualTo("Ilse");
        });
    }

    @Test
    void when_it_was_seen_last_is_kept_to_the_hour_also_when_its_sign_in_is_over() {
        String session = open(link(made("Cellar")));
        clock.advance(Duration.ofHours(3));
        sessions.visitor(session);
        clock.advance(Duration.ofDays(40));

        assertThat(sessions.visitor(session)).isEmpty();
        assertThat(tablets.all(DULUTH)).singleElement().satisfies(tablet -> {
            assertThat(tablet.lastSeen()).isEqualTo("2027-03-01T12:00");
            assertThat(tablet.opens()).isFalse();
        });
    }

    @Test
    void ending_one_signs_it_out_and_closes_a_link_that_is_still_open() {
        String session = open(link(made("Cellar")));
        UUID id = sessions.visitor(session).orElseThrow().memberId();
        Link another = link(Decided.done(tablets.makeLink(id, ilse.id())).token());

        assertThat(Decided.done(tablets.end(id, ilse.id()))).isEqualTo("Cellar");

        assertThat(sessions.visitor(session)).isEmpty();
        assertThat(links.find(LinkPurpose.TABLET, "x")).isEmpty();
        assertThat(tablets.open(another, id)).isInstanceOf(Decision.Gone.class);
        assertThat(tablets.end(id, ilse.id()).refusal()).contains(new TabletRefusal.Ended("Cellar"));
        assertThat(tablets.makeLink(id, ilse.id()).refusal()).contains(new TabletRefusal.Ended("Cellar"));
        assertThat(tablets.all(DULUTH)).singleElement().satisfies(tablet -> {
            assertThat(tablet.endedOn()).isEqualTo("2027-03-01");
            assertThat(tablet.endedBy()).isEqualTo("Ilse");
        });
        assertThat(tablets.make("Cellar", cellar, ilse.id())).isInstanceOf(Decision.Done.class);
    }

    @Test
    void a_new_link_signs_the_lost_tablet_out_and_closes_the_link_before() {
        Link first = link(made("Cellar"));
        UUID id = Objects.requireNonNull(first.memberId());
        Link second = link(Decided.done(tablets.makeLink(id, ilse.id())).token());

        assertThat(tablets.open(first, id)).isInstanceOf(Decision.Gone.class);
        String session = open(second);
        tablets.makeLink(id, ilse.id());

        assertThat(sessions.visitor(session)).isEmpty();
        assertThat(database().sql().fetchCount(MEMBER_SESSION)).isZero();
    }

    @Test
    void two_at_work_have_names_that_tell_them_apart_and_no_site_means_no_tablet() {
        made("Cellar");

        assertThat(tablets.make("cellar", cellar, ilse.id()).refusal()).contains(new TabletRefusal.NameTaken("cellar"));
        assertThat(tablets.make("Barn", UUID.randomUUID(), ilse.id()).refusal()).contains(new TabletRefusal.SiteGone());
        assertThat(tablets.end(UUID.randomUUID(), ilse.id())).isInstanceOf(Decision.Missing.class);
    }

    @Test
    void it_is_nobody_of_the_group() {
        UUID id = Objects.requireNonNull(link(made("Cellar")).memberId());
        CalledStore.renew(database().sql());

        assertThat(members.all()).extracting(member -> member.name()).doesNotContain("the tablet Cellar");
        assertThat(members.find(id)).isEmpty();
        assertThat(members.named("the tablet Cellar")).isEmpty();
        assertThat(links.open()).isEmpty();
        assertThat(new TabletReachStore(database().sql()).lookers())
                .extracting(looker -> looker.words())
                .containsExactly("Ilse", "Priya", "Tom");
        assertThat(database().sql().fetchValue(MEMBER.CALLED, MEMBER.ID.eq(id))).isEqualTo("the tablet Cellar");
    }

    private String made(String name) {
        return Decided.done(tablets.make(name, cellar, ilse.id()));
    }

    private Link link(String token) {
        return links.find(LinkPurpose.TABLET, token).orElseThrow();
    }

    private String open(Link link) {
        return Decided.done(tablets.open(link, Objects.requireNonNull(link.memberId())));
    }

    private UUID site(String name) {
        UUID id = UUID.randomUUID();
        database()
                .sql()
                .insertInto(SITE)
                .set(SITE.ID, id)
                .set(SITE.NAME, name)
                .set(SITE.WALK_ORDER, 1)
                .set(SITE.CIRCUIT_AMPS, BigDecimal.valueOf(15))
                .set(SITE.CIRCUIT_VOLTS, 120)
                .set(SITE.NOTE, "")
                .set(SITE.VERSION, 1)
                .execute();
        return id;
    }
}
