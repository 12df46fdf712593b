package warmshelf.check;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.photo.Photo;
import warmshelf.sowing.NotedProblem;
import warmshelf.sowing.Problem;
import warmshelf.sowing.ProblemStore;

/**
 * Today: the round, and above it what is new for whoever looks.
 *
 * @param one the card shown where checks are walked one at a time; null where they stand in a list
 * @param whole everybody's checks, not only the visitor's own
 * @param looks whether the visitor is on duty today
 * @param noted problems at the visitor's own sowings, with their photos
 * @param notedElsewhere problems at other members' sowings, for coordinators
 * @param answered what became of problems that the visitor noted
 * @param held racks that are held and concern the visitor
 * @param lights where trays could go under a light
 * @param madeAt the moment, as the phone sends it back with each tick
 * @param page the random name from which the ticks' ids are made
 */
record TodayPage(
        Round round,
        @Nullable CheckStep one,
        List<HowTo> howTos,
        boolean whole,
        boolean looks,
        List<TodayStore.OnDuty> onDuty,
        List<TodayStore.OnDuty> tomorrow,
        List<Problem> problems,
        List<NotedProblem> noted,
        Map<UUID, List<Photo>> photosOf,
        List<NotedProblem> notedElsewhere,
        List<ProblemStore.Told> answered,
        List<HeldRack> held,
        LightChoices lights,
        String madeAt,
        String page) {}
