package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.UsualSowing;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/**
 * The second question of Ask: how many plants. All else stands at what is usual.
 *
 * @param frostKnown whether the member's frost dates are known
 * @param lot the lot chosen; null: a packet that is not in the seed box yet
 * @param crop of the lot or packet; null where what was given is none
 * @param crops to choose from where it is none
 * @param otherSeed back to the first question, with the other answers
 */
record AskFormPage(
        FormReader form,
        boolean frostKnown,
        @Nullable Chosen lot,
        @Nullable Crop crop,
        List<Choice> crops,
        AskAssumed assumed,
        AskChoices choices,
        String otherSeed) {
    static final String TEMPLATE = "sowing/ask-plants.peb";

    /** The lot chosen, and whose it is and what is free of it, in words. */
    public record Chosen(String id, String variety, int year, String words) {}

    /** What a list of crops says beside those that are better not sown in a tray; empty for the rest. */
    static String sownElsewhere(Crop crop) {
        return UsualSowing.of(crop)
                .map(usual -> switch (usual.place()) {
                    case WHERE_IT_GROWS -> SAY.usuallyWhereItGrows();
                    case POT_THAT_ROTS -> SAY.inPotsThatRot();
                })
                .orElse("");
    }
}
