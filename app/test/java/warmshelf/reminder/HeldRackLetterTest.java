package warmshelf.reminder;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.check.HeldRack;
import warmshelf.sowing.Problem;

/** What the morning's letter says of a rack that is held. */
class HeldRackLetterTest {
    private static final LocalDate DAY = LocalDate.of(2027, 3, 2);
    private static final HeldRack NORTH = new HeldRack(
            UUID.randomUUID(),
            "Hall cellar",
            "North",
            List.of(new HeldRack.Note(
                    UUID.randomUUID(),
                    UUID.randomUUID(),
                    "Pepper · Lantern Row",
                    Problem.PESTS,
                    LocalDate.of(2027, 3, 1),
                    "Priya",
                    "webs")),
            Set.of());

    private static DayAhead ahead(List<HeldRack> held) {
        return DayAhead.of(DAY, false, List.of(), 0, List.of(), List.of(), held, List.of());
    }

    @Test
    void it_is_reason_enough_to_write_and_says_what_was_found_and_what_to_do() {
        assertThat(ahead(List.of()).isEmpty()).isTrue();
        assertThat(ahead(List.of(NORTH)).isEmpty()).isFalse();
        assertThat(ahead(List.of(NORTH)).subject()).isEqualTo("Today: rack North is held");
        assertThat(ahead(List.of(NORTH)).brief()).isEqualTo("Rack North: pests (insects, mites, webs).");
        assertThat(ahead(List.of(NORTH)).words("Tom", "Seed Starters", "http://localhost"))
                .contains(
                        "Rack North is held: pests (insects, mites, webs), found on Pepper · Lantern Row by Priya on Mon 1 Mar.",
                        "Look under the leaves of yours.",
                        "http://localhost/how-to/pests");
    }
}
