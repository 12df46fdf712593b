package warmshelf.plan;

import static warmshelf.plan.PlanSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.words.FormReader;

/** Reads how a run is to be made: seconds, starting number, whether with places under a light, and the published stays that it may move. */
final class PlanStartForm {
    static final int LEAST_SECONDS = 5;
    static final int MOST_SECONDS = 300;

    private static final int LARGEST_STARTING_NUMBER = 1_000_000;

    private final FormReader reader;
    private final List<UUID> freed = new ArrayList<>();
    private final int seconds;
    private final int startingNumber;
    private final boolean withLight;

    PlanStartForm(Map<String, List<String>> typed) {
        reader = new FormReader(typed);
        seconds = reader.wholeNumber("seconds", SAY.secondsField(), LEAST_SECONDS, MOST_SECONDS);
        startingNumber = reader.optionalWholeNumber(
                        "startingNumber", SAY.startingNumberField(), 0, LARGEST_STARTING_NUMBER)
                .orElse(1);
        withLight = reader.ticked("withLight");
        for (String stay : typed.getOrDefault("free", List.of())) {
            try {
                freed.add(UUID.fromString(stay));
            } catch (IllegalArgumentException notAnId) {
                reader.refuse("free", SAY.stayUnknown());
            }
        }
    }

    FormReader reader() {
        return reader;
    }

    int seconds() {
        return seconds;
    }

    int startingNumber() {
        return startingNumber;
    }

    boolean withLight() {
        return withLight;
    }

    PlanStore.Manner manner() {
        return new PlanStore.Manner(startingNumber, seconds, withLight);
    }

    List<UUID> freed() {
        return freed;
    }
}
