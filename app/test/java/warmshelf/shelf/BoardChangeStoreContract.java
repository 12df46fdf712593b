package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.BOARD_LOOK;
import static warmshelf.db.generated.Tables.MAT_OUT;
import static warmshelf.db.generated.Tables.STAY_MOVE;
import static warmshelf.testing.Decided.done;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Reach;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;
import warmshelf.testing.StoreContract;
import warmshelf.testing.TestGroup;

/** What others changed is told once, to those whom it concerns. */
abstract class BoardChangeStoreContract extends StoreContract {
    private static final LocalDate TODAY = TestGroup.TODAY;

    private BoardChangeStore changes;
    private ShelfCast cast;
    private UUID site;
    private UUID mat;
    private List<Place> places;
    private UUID tom;

    @BeforeEach
    void prepare() {
        changes = new BoardChangeStore(database(), audit());
        cast = new ShelfCast(database(), audit());
        UUID rack = cast.rack();
        ShelvingStore shelving = new ShelvingStore(database().sql());
        site = shelving.all().get(0).id();
        UUID shelf = done(new ShelfStore(database().sql(), audit()).add(rack, new ShelfDraft(1, 2, 40), cast.ilse()));
        mat = done(new MatStore(database().sql(), audit())
                .add(shelf, new MatDraft("M1", 1, 2, 18, 32, 107, 25), cast.ilse()));
        places = shelving.mat(mat).orElseThrow().places();
        tom = new MemberStore(database(), audit())
                .add(database().sql(), new NewMember("Tom Okafor", "US", "55804", "none"), false, "for a test");
    }

    private BoardChanges look(UUID member, Reach reach) {
        return changes.look(new BoardChangeStore.Reader(member, reach), TODAY);
    }

    private void later() {
        clock.advance(Duration.ofMinutes(30));
    }

    private UUID placed(int place) {
        return cast.stay(places.get(place).id(), 1, 4, TODAY, 9);
    }

    private void takeOut() {
        database()
                .sql()
                .insertInto(MAT_OUT)
                .set(MAT_OUT.ID, UUID.randomUUID())
                .set(MAT_OUT.MAT_ID, mat)
                .set(MAT_OUT.FROM_DAY, TODAY)
                .set(MAT_OUT.TO_DAY, TODAY.plusDays(2))
                .set(MAT_OUT.REASON, "a worn cord")
                .set(MAT_OUT.MADE_BY, cast.ilse())
                .set(MAT_OUT.MADE_AT, audit().now())
                .execute();
    }

    @Test
    void the_first_look_marks_nothing_and_what_comes_after_it_is_marked_until_seen() {
        placed(0);
        assertThat(look(tom, Reach.WHOLE_GROUP)).isEqualTo(BoardChanges.NONE);

        later();
        UUID stay = placed(1);
        later();
        assertThat(look(tom, Reach.WHOLE_GROUP).stays()).isEqualTo(Map.of(stay, StayMark.Change.PLACED));
        assertThat(look(tom, Reach.WHOLE_GROUP).trays())
                .as("during the same visit")
                .isOne();

        later();
        assertThat(look(tom, Reach.WHOLE_GROUP)).isEqualTo(BoardChanges.NONE);
    }

    @Test
    void nobody_is_told_what_they_did_themselves() {
        look(cast.ilse(), Reach.WHOLE_GROUP);
        later();
        placed(0);
        takeOut();
        later();

        assertThat(look(cast.ilse(), Reach.WHOLE_GROUP)).isEqualTo(BoardChanges.NONE);
    }

    @Test
    void others_trays_concern_coordinators_of_the_site_and_no_member() {
        Reach elsewhere = Reach.at(List.of(UUID.randomUUID()));
        look(tom, Reach.NOWHERE);
        later();
        UUID stay = placed(0);
        takeOut();
        later();

        assertThat(look(tom, Reach.NOWHERE)).isEqualTo(BoardChanges.NONE);
        assertThat(look(tom, elsewhere)).isEqualTo(BoardChanges.NONE);
        BoardChanges there = look(tom, Reach.at(List.of(site)));
        assertThat(there.stays()).containsOnlyKeys(stay);
        assertThat(there.others())
                .extracting(BoardChanges.Line::words)
                .containsExactly("Mat M1 is out of service Mon 1 Mar to Tue 2 Mar");
    }

    @Test
    void what_was_moved_is_told_as_moved_and_what_was_freed_by_its_place() {
        UUID stay = placed(0);
        look(tom, Reach.WHOLE_GROUP);
        later();
        database()
                .sql()
                .insertInto(STAY_MOVE)
                .set(STAY_MOVE.ID, UUID.randomUUID())
                .set(STAY_MOVE.STAY_ID, stay)
                .set(STAY_MOVE.NEW_STAY_ID, stay)
                .set(STAY_MOVE.OLD_PLACE_ID, places.get(1).id())
                .set(STAY_MOVE.OLD_FIRST_QUARTER, 1)
                .set(STAY_MOVE.OLD_FROM_DAY, TODAY)
                .set(STAY_MOVE.OLD_TO_DAY, TODAY.plusDays(9))
                .set(STAY_MOVE.NEW_PLACE_ID, places.get(0).id())
                .set(STAY_MOVE.NEW_FIRST_QUARTER, 1)
                .set(STAY_MOVE.NEW_FROM_DAY, TODAY)
                .set(STAY_MOVE.NEW_TO_DAY, TODAY.plusDays(9))
                .set(STAY_MOVE.VERSION_AFTER, 2)
                .set(STAY_MOVE.MOVED_BY, cast.ilse())
                .set(STAY_MOVE.MOVED_AT, audit().now())
                .execute();
        audit().write(database().sql(), cast.ilse(), "free place", "stay", stay, "mat M1: room is needed");
        later();

        BoardChanges told = look(tom, Reach.WHOLE_GROUP);

        assertThat(told.stays()).isEqualTo(Map.of(stay, StayMark.Change.MOVED));
        assertThat(told.others()).containsExactly(new BoardChanges.Line("Mat M1, place 1 was freed", "/stays/" + stay));
    }

    @Test
    void a_look_is_kept_once_a_visit() {
        look(tom, Reach.NOWHERE);
        look(tom, Reach.NOWHERE);
        long writes = database().writes();
        look(tom, Reach.NOWHERE);

        assertThat(database().writes()).isEqualTo(writes);
        assertThat(database().sql().fetchCount(BOARD_LOOK)).isOne();
    }
}
