package warmshelf.check;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Slot;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.Problem;

/**
 * One tick of the round, as the phone sends it.
 *
 * @param id made by the phone or the page; the same id sent twice is kept once
 * @param finished the bag is done with
 * @param lightPlace where the tray goes under a light; null: home, to the place that is booked for it, or not asked
 * @param supersedes the entry this one corrects
 * @param goesHome the grower takes it home when it leaves the heat
 * @param fromPhone when it was seen, where it waited on a phone; null: it is entered now
 * @param compost in which it is sown, or moved to; empty: nothing is said of it
 * @param giveAway how many of its seedlings its grower offers to others; null: nothing is said of it
 * @param seenBy who looked, where somebody else types it in from paper, or a tablet keeps it for them; null: who enters it
 */
public record Tick(
        UUID id,
        EntryStep step,
        LocalDate seenOn,
        @Nullable Integer sprouted,
        @Nullable Integer moved,
        @Nullable Integer lost,
        boolean finished,
        @Nullable Problem problem,
        String note,
        @Nullable LightPlace lightPlace,
        @Nullable UUID supersedes,
        boolean goesHome,
        @Nullable FromPhone fromPhone,
        String compost,
        @Nullable Integer giveAway,
        @Nullable UUID seenBy) {

    /** A tick that whoever looked enters. */
    public Tick(
            UUID id,
            EntryStep step,
            LocalDate seenOn,
            @Nullable Integer sprouted,
            @Nullable Integer moved,
            @Nullable Integer lost,
            boolean finished,
            @Nullable Problem problem,
            String note,
            @Nullable LightPlace lightPlace,
            @Nullable UUID supersedes,
            boolean goesHome,
            @Nullable FromPhone fromPhone,
            String compost) {
        this(
                id,
                step,
                seenOn,
                sprouted,
                moved,
                lost,
                finished,
                problem,
                note,
                lightPlace,
                supersedes,
                goesHome,
                fromPhone,
                compost,
                null,
                null);
    }

    /** A tick that is entered on a page, with what was seen known by its day. */
    public Tick(
            UUID id,
            EntryStep step,
            LocalDate seenOn,
            @Nullable Integer sprouted,
            @Nullable Integer moved,
            @Nullable Integer lost,
            boolean finished,
            @Nullable Problem problem,
            String note,
            @Nullable LightPlace lightPlace,
            @Nullable UUID supersedes) {
        this(id, step, seenOn, sprouted, moved, lost, finished, problem, note, lightPlace, supersedes, false, null, "");
    }

    /**
     * What a phone knew.
     *
     * @param seenAt when it was ticked, by the server's clock
     * @param knewUntil when the page was made on which it was ticked: of later entries the person could not know
     */
    public record FromPhone(OffsetDateTime seenAt, OffsetDateTime knewUntil) {}

    /** The same tick as a phone kept it, with a remark after its note where there is one and it fits. */
    Tick fromPhone(FromPhone phone, String remark) {
        String both = (note + " " + remark).strip();
        return known(both.length() > TickForm.LONGEST_NOTE ? note : both, phone, seenBy);
    }

    /** The same tick as somebody else saw it, who wrote it on paper or pressed on a tablet. */
    Tick seenBy(UUID looker) {
        return known(note, fromPhone, looker);
    }

    private Tick known(String newNote, @Nullable FromPhone phone, @Nullable UUID looker) {
        return new Tick(
                id,
                step,
                seenOn,
                sprouted,
                moved,
                lost,
                finished,
                problem,
                newNote,
                lightPlace,
                supersedes,
                goesHome,
                phone,
                compost,
                giveAway,
                looker);
    }

    /** Quarters of a place under a light. */
    public record LightPlace(UUID placeId, Slot slot) {}
}
