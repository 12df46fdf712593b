package warmshelf.finding.trial;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.seed.Lot;

/**
 * A trial that was declared.
 *
 * @param number by which people call it
 * @param season the one that the group worked towards
 * @param declaredOn the day, in the group's zone
 * @param ways in the order of their letters
 * @param blocks in the order of their numbers
 */
public record Trial(
        UUID id,
        int number,
        TrialKind kind,
        Lot lot,
        int season,
        int seedsEach,
        UUID declaredBy,
        String declaredByName,
        LocalDate declaredOn,
        List<TrialWay> ways,
        List<Block> blocks) {
    public Trial {
        ways = List.copyOf(ways);
        blocks = List.copyOf(blocks);
    }

    /**
     * One tray or bag of each way, compared within itself.
     *
     * @param sowings the sowing of each way, by its letter
     */
    public record Block(
            int number, UUID memberId, String member, LocalDate sowOn, TrialDraw draw, Map<String, UUID> sowings) {}

    /** Whether a member carries a block of it. */
    public boolean isCarriedBy(UUID member) {
        return blocks.stream().anyMatch(block -> block.memberId().equals(member));
    }

    /** The day on which it was first to be sown; null: nobody carries a block yet. */
    public @Nullable LocalDate firstDay() {
        return blocks.stream().map(Block::sowOn).min(LocalDate::compareTo).orElse(null);
    }

    /** How many people carry blocks. */
    public long carriers() {
        return blocks.stream().map(Block::memberId).distinct().count();
    }
}
