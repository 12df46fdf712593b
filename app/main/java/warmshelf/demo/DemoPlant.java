package warmshelf.demo;

import java.time.LocalDate;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.SpaceRequest;
import warmshelf.crop.Emergence;
import warmshelf.crop.Method;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStage;

/** One sowing of the demo while its diary is lived: what nobody can see, and what has been counted so far. */
final class DemoPlant {
    /** Roots show in a bag after about this part of the time to emergence, as the timeline assumes. */
    private static final double ROOTS = 0.7;

    private final DemoSowing row;
    private final Sowing sowing;
    private final LocalDate start;
    private final LocalDate askedOn;
    private final @Nullable SpaceRequest request;
    private final double share;
    private final Random chance;
    private @Nullable SeedFate roots;
    private @Nullable SeedFate seedlings;
    private double latestDays;
    private int moved;
    private int lost;
    private boolean troubleSeen;

    DemoPlant(
            DemoSowing row,
            Sowing sowing,
            LocalDate start,
            LocalDate askedOn,
            @Nullable SpaceRequest request,
            double share) {
        this.row = row;
        this.sowing = sowing;
        this.start = start;
        this.askedOn = askedOn;
        this.request = request;
        this.share = row.has("dead-seed") ? 0 : share;
        this.chance = new Random(7_919L * row.number());
    }

    DemoSowing row() {
        return row;
    }

    Sowing sowing() {
        return sowing;
    }

    LocalDate start() {
        return start;
    }

    LocalDate askedOn() {
        return askedOn;
    }

    @Nullable
    SpaceRequest request() {
        return request;
    }

    Random chance() {
        return chance;
    }

    boolean inBag() {
        return sowing.method() == Method.BAG;
    }

    /** Settles when its seed shows, once it is known how warm it lies. */
    void warm(Emergence expected) {
        latestDays = expected.days95();
        int age = -row.start();
        SeedFate drawnRoots = SeedFate.draw(chance, sowing.seeds(), share, expected, ROOTS);
        SeedFate drawnSeedlings = SeedFate.draw(chance, sowing.seeds(), share, expected, 1);
        // The table says what is to be seen today; the draw is moved by what little it takes.
        SowingStage by = row.furthest();
        SeedFate showing = inBag() ? drawnRoots : drawnSeedlings;
        if (by == SowingStage.SOWN) {
            showing = showing.withFirstBetween(age + 0.2, Double.POSITIVE_INFINITY);
        } else if (by == SowingStage.SPROUTING || by == SowingStage.EMERGED) {
            showing = showing.withFirstBetween(age - 2.0, age - 1.0);
        }
        roots = inBag() ? showing : drawnRoots;
        seedlings = inBag() ? drawnSeedlings : showing;
        if (by == SowingStage.IN_CELLS) {
            seedlings = seedlings.withFirstBetween(age + 0.2, Double.POSITIVE_INFINITY);
        }
    }

    private int age(LocalDate day) {
        return (int) (day.toEpochDay() - start.toEpochDay());
    }

    /** Roots that show in the bag on a day. */
    int rootsOn(LocalDate day) {
        return roots == null ? 0 : roots.shownBy(age(day));
    }

    /** Seedlings that are up on a day; from a bag no more than were moved. */
    int upOn(LocalDate day) {
        int up = seedlings == null ? 0 : seedlings.shownBy(age(day));
        return inBag() ? Math.min(up, moved) : up;
    }

    /** Whether the bag has given what it will. */
    boolean bagIsDone(LocalDate day) {
        return roots != null && (rootsOn(day) >= 0.9 * roots.alive() || age(day) >= ROOTS * latestDays);
    }

    /** Whether most of what will come up is up. */
    boolean mostlyUp(LocalDate day) {
        return seedlings != null && upOn(day) >= 0.6 * (inBag() ? moved : seedlings.alive());
    }

    /** Whether nearly all should have shown days ago. */
    boolean isLongOverdue(LocalDate day) {
        return age(day) > latestDays + 3;
    }

    void move(int soFar) {
        moved = soFar;
    }

    int lose(int more) {
        lost += more;
        return lost;
    }

    int lost() {
        return lost;
    }

    /** Whether its trouble shows at this look; it shows once. */
    boolean meets(String which) {
        if (troubleSeen || !row.has(which)) {
            return false;
        }
        troubleSeen = true;
        return true;
    }
}
