package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.QUARTER_DAY;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import warmshelf.allocation.Band;
import warmshelf.allocation.ClashStore;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.allocation.StayStore;
import warmshelf.crop.CropCatalogue;
import warmshelf.decision.Decision;
import warmshelf.seed.Lot;
import warmshelf.seed.NewLot;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.Problem;
import warmshelf.sowing.SowingResultStore;
import warmshelf.sowing.SowingStage;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;
import warmshelf.testing.TestGroup;
import warmshelf.web.Decisions;
import warmshelf.words.Units;

/** What the contracts of ticks share: a small room, ticks in the making, and looks at what became of them. */
abstract class TickContract extends StoreContract {
    static final LocalDate TODAY = TestGroup.TODAY;
    static final LocalDate LIGHT_UNTIL = LocalDate.of(2027, 5, 1);
    static final Slot LEFT = new Slot(1, 2);

    GrowRoom room;
    StayStore stays;
    EntryStore entries;
    TickStore ticks;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        stays = new StayStore(audit(), new ClashStore(CropCatalogue.bundled()));
        entries = new EntryStore(audit());
        ticks = new TickStore(database(), audit(), room.sowings(), entries, stays, room.lots());
    }

    @AfterEach
    void what_the_sowings_taught_is_kept_as_it_would_be_worked_out_anew() {
        SowingResultStore.Found found = new SowingResultStore(database(), entries, audit()).rebuild();
        assertThat(found).isEqualTo(new SowingResultStore.Found(found.kept(), 0, 0));
    }

    UUID sown(UUID sowing) {
        assertThat(keep(sowing, step(EntryStep.SOWN).on(TODAY.minusDays(10)))).isInstanceOf(TickOutcome.Kept.class);
        return sowing;
    }

    TickOutcome keep(UUID sowing, Draft draft) {
        return ((Decision.Done<TickOutcome>) ticks.keep(sowing, draft.tick(), LIGHT_UNTIL, room.priya())).value();
    }

    /** How a tick that is not kept is answered: the kind of answer and its words. */
    String no(UUID sowing, Draft draft) {
        Decision<TickOutcome> decision = ticks.keep(sowing, draft.tick(), LIGHT_UNTIL, room.priya());
        return decision.getClass().getSimpleName() + ": " + Decisions.words(decision, Units.METRIC);
    }

    void layOnMat(UUID sowing, UUID place, LocalDate from, LocalDate to) {
        layOnMat(sowing, new PlaceAndDays(place, LEFT, from, to));
    }

    void layOnMat(UUID sowing, PlaceAndDays spot) {
        database().sql().transaction(tx -> stays.layOnMat(tx.dsl(), sowing, spot, 26, new Band(24, 30), room.tom()));
    }

    UUID lot(@Nullable Integer seeds) {
        return room.lots().add(new NewLot("pepper", "Lantern Row", 2026, seeds, null, false, ""), room.tom());
    }

    @Nullable
    Integer left(UUID lot) {
        return room.lots().find(lot).map(Lot::seedsLeft).orElse(null);
    }

    SowingStage stage(UUID sowing) {
        return room.sowings().find(sowing).orElseThrow().stage();
    }

    List<Stay> stays(UUID sowing) {
        return StayBookStore.ofSowing(database().sql(), sowing);
    }

    int takenOn(LocalDate day) {
        return database().sql().fetchCount(QUARTER_DAY, QUARTER_DAY.ON_DAY.eq(day));
    }

    static Draft look(int sprouted) {
        Draft draft = new Draft(EntryStep.LOOK);
        draft.sprouted = sprouted;
        return draft;
    }

    static Draft step(EntryStep step) {
        return new Draft(step);
    }

    /** A tick in the making; one draft is one entry, however often it is sent. */
    static final class Draft {
        private final UUID id = UUID.randomUUID();
        private final EntryStep step;
        private LocalDate seenOn = TODAY;
        private String compost = "";

        @Nullable
        Integer sprouted;

        @Nullable
        Integer moved;

        private boolean finished;
        private @Nullable Problem problem;
        private String note = "";
        private Tick.@Nullable LightPlace light;
        private @Nullable UUID supersedes;
        private Tick.@Nullable FromPhone phone;

        Draft(EntryStep step) {
            this.step = step;
        }

        UUID id() {
            return id;
        }

        Draft on(LocalDate day) {
            seenOn = day;
            return this;
        }

        Draft moved(int count) {
            moved = count;
            return this;
        }

        /** As a phone saw it at a moment, on a page made at another. */
        Draft seen(OffsetDateTime seenAt, OffsetDateTime knewUntil) {
            phone = new Tick.FromPhone(seenAt, knewUntil);
            seenOn = seenAt.toLocalDate();
            return this;
        }

        Draft done() {
            finished = true;
            return this;
        }

        Draft problem(Problem noted) {
            problem = noted;
            return this;
        }

        Draft in(String name) {
            compost = name;
            return this;
        }

        Draft note(String text) {
            note = text;
            return this;
        }

        Draft to(UUID place, Slot slot) {
            light = new Tick.LightPlace(place, slot);
            return this;
        }

        Draft correcting(Draft other) {
            supersedes = other.id;
            return this;
        }

        Tick tick() {
            return new Tick(
                    id,
                    step,
                    seenOn,
                    sprouted,
                    moved,
                    null,
                    finished,
                    problem,
                    note,
                    light,
                    supersedes,
                    false,
                    phone,
                    compost);
        }
    }
}
