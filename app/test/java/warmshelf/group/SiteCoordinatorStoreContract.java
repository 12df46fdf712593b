package warmshelf.group;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.testing.Decided.done;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Decision;
import warmshelf.decision.Reach;
import warmshelf.shelf.Circuit;
import warmshelf.shelf.SiteDraft;
import warmshelf.shelf.SiteStore;
import warmshelf.testing.Person;
import warmshelf.testing.StoreContract;
import warmshelf.testing.TestGroup;

abstract class SiteCoordinatorStoreContract extends StoreContract {
    private MemberStore members;
    private SiteCoordinatorStore coordinators;
    private SessionStore sessions;
    private UUID ilse;
    private UUID tom;
    private UUID cellar;
    private UUID shed;

    @BeforeEach
    void moveIn() {
        List<Person> people = TestGroup.moveIn(database(), audit());
        ilse = people.get(0).id();
        tom = people.get(1).id();
        members = new MemberStore(database(), audit());
        coordinators = new SiteCoordinatorStore(database(), audit(), members);
        sessions = new SessionStore(database(), clock);
        cellar = site("Cellar", 1);
        shed = site("Shed", 2);
    }

    private UUID site(String name, int order) {
        return done(new SiteStore(database().sql(), audit())
                .add(new SiteDraft(name, order, new Circuit(15, 120), ""), ilse));
    }

    private Reach reach(UUID member) {
        return sessions.visitor(sessions.open(member)).orElseThrow().reach();
    }

    @Test
    void whoever_is_given_sites_decides_there_and_stays_a_member_elsewhere() {
        done(coordinators.set(tom, Set.of(cellar, shed), ilse));

        assertThat(reach(tom)).isEqualTo(Reach.at(Set.of(cellar, shed)));
        assertThat(coordinators.names()).containsOnly(Map.entry(tom, List.of("Cellar", "Shed")));
        assertThat(members.find(tom).orElseThrow().coordinator()).isFalse();
        assertThat(reach(ilse)).isEqualTo(Reach.WHOLE_GROUP);
    }

    @Test
    void other_sites_replace_those_before_and_none_makes_a_plain_member() {
        done(coordinators.set(tom, Set.of(cellar), ilse));
        done(coordinators.set(tom, Set.of(shed), ilse));
        assertThat(coordinators.of(tom)).containsExactly(shed);

        done(coordinators.set(tom, Set.of(), ilse));
        assertThat(reach(tom)).isEqualTo(Reach.NOWHERE);
    }

    @Test
    void the_whole_group_always_keeps_a_coordinator_whatever_the_sites_have() {
        done(coordinators.set(tom, Set.of(cellar, shed), ilse));

        assertThat(coordinators.set(ilse, Set.of(cellar), tom).refusal())
                .contains(new GroupRefusal.OnlyCoordinator("Ilse Brandt"));
        assertThat(members.setCoordinator(ilse, false, tom).refusal())
                .contains(new GroupRefusal.OnlyCoordinator("Ilse Brandt"));
        assertThat(reach(ilse)).isEqualTo(Reach.WHOLE_GROUP);
        assertThat(coordinators.of(ilse)).isEmpty();
    }

    @Test
    void a_coordinator_of_the_whole_group_can_step_back_to_a_site_once_there_is_another() {
        done(members.setCoordinator(tom, true, ilse));

        done(coordinators.set(ilse, Set.of(cellar), tom));

        assertThat(reach(ilse)).isEqualTo(Reach.at(Set.of(cellar)));
    }

    @Test
    void who_comes_to_coordinate_the_whole_group_or_comes_back_has_no_sites_any_more() {
        done(coordinators.set(tom, Set.of(cellar), ilse));
        done(members.setCoordinator(tom, true, ilse));
        assertThat(coordinators.of(tom)).isEmpty();
        done(coordinators.set(tom, Set.of(cellar), ilse));

        database().sql().transaction(inside -> members.leave(inside.dsl(), tom, ilse));
        members.comeBack(tom, ilse);

        assertThat(reach(tom)).isEqualTo(Reach.NOWHERE);
    }

    @Test
    void a_site_that_is_deleted_takes_nobody_to_the_whole_group() {
        done(coordinators.set(tom, Set.of(shed), ilse));

        database().sql().deleteFrom(SITE).where(SITE.ID.eq(shed)).execute();

        assertThat(reach(tom)).isEqualTo(Reach.NOWHERE);
    }

    @Test
    void a_site_that_is_not_there_is_told_and_nothing_changes() {
        done(coordinators.set(tom, Set.of(shed), ilse));

        Decision<UUID> decision = coordinators.set(tom, Set.of(cellar, UUID.randomUUID()), ilse);

        assertThat(decision.refusal()).contains(new GroupRefusal.SiteGone());
        assertThat(coordinators.of(tom)).containsExactly(shed);
    }
}
