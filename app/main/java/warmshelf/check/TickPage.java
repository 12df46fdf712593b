package warmshelf.check;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.LitPlace;
import warmshelf.allocation.RackHolds;
import warmshelf.allocation.Stay;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.History;
import warmshelf.sowing.Problem;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.timeline.ColdSpell;
import warmshelf.timeline.PlantCare;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/**
 * One tick with every field.
 *
 * @param page the random name from which its id is made, so that it counts once a day
 * @param booked the place under a light that waits for the tray and that it may go to; null: none
 * @param correcting the entry it corrects, or empty
 * @param steps those that may be entered now
 * @param litPlaces where the tray could go
 * @param composts those that the group has noted
 */
record TickPage(
        History history,
        Sowing sowing,
        Progress progress,
        FormReader form,
        UUID page,
        @Nullable Stay booked,
        String correcting,
        List<Choice> steps,
        List<Choice> problems,
        List<LitPlace> litPlaces,
        List<String> composts) {

    static TickPage of(
            History history,
            FormReader form,
            LocalDate today,
            List<LitPlace> litPlaces,
            RackHolds holds,
            List<String> composts) {
        Sowing sowing = history.sowing();
        return new TickPage(
                history,
                sowing,
                history.progress(),
                form,
                UUID.randomUUID(),
                history.lightBooked(today, holds),
                form.text("supersedes"),
                TickRules.open(sowing.method(), sowing.stage()).stream()
                        .filter(step -> step != EntryStep.CHILLED
                                || ColdSpell.of(sowing.crop()).isPresent())
                        .filter(step -> step != EntryStep.TRIMMED || PlantCare.isTrimmed(sowing.crop()))
                        .map(step -> new Choice(step.word(), step.done()))
                        .toList(),
                problems(sowing.stage().isBeforeSowing()),
                litPlaces,
                composts);
    }

    private static List<Choice> problems(boolean unsown) {
        return Arrays.stream(Problem.values())
                .filter(problem -> unsown ? problem.isBeforeSowing() : problem.isAfterSowing())
                .map(problem -> new Choice(problem.word(), problem.words()))
                .toList();
    }
}
