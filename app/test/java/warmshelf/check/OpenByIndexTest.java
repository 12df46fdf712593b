package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MEMBER;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.RequestStore;
import warmshelf.allocation.StayBookStore;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.testing.AskedOf;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.TestGroup;

/** What is open is found by an index, however much is over: as H2 says it would go about each question. */
class OpenByIndexTest {
    private final Database database = Database.inMemory("open-by-index-" + UUID.randomUUID());
    private final Audit audit = new Audit(Clock.fixed(Instant.parse("2027-03-01T15:00:00Z"), ZoneOffset.UTC));
    private AskedOf asked;
    private GrowRoom room;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database, audit);
        asked = AskedOf.from(database);
    }

    @AfterEach
    void close() {
        asked.close();
        database.close();
    }

    @Test
    void sowings_under_way() {
        room.sowings().underWay();

        assertThat(asked.plans()).anyMatch(plan -> plan.contains("sowing_stage_index"));
    }

    @Test
    void stays_that_are_not_over() {
        StayBookStore.lastingAfter(database.sql(), TestGroup.TODAY);

        assertThat(asked.plans()).anyMatch(plan -> plan.contains("stay_to_day"));
    }

    @Test
    void requests_that_wait() {
        new RequestStore(database, audit).waiting();

        assertThat(asked.plans()).anyMatch(plan -> plan.contains("space_request_state"));
    }

    @Test
    void a_question_without_an_index_is_told_from_these() {
        database.sql().selectFrom(MEMBER).where(MEMBER.POSTCODE.eq("55804")).fetch();

        assertThat(asked.plans()).hasSize(1).allMatch(plan -> plan.contains("tableScan"));
    }
}
