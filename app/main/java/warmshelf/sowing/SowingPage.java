package warmshelf.sowing;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.RequestStore;
import warmshelf.allocation.Stay;
import warmshelf.photo.Photo;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.TimelineStep;

/**
 * The page of one sowing.
 *
 * @param noted its open problems
 * @param typists who typed an entry in for whoever looked, by entry
 * @param answers to what was noted, by entry
 * @param mayTakeOut whether the visitor may take photos of it away
 * @param decided who decided last on its place; null: nobody has
 * @param stay where it lies today; null: nowhere of the group's
 * @param next the first step that is not done; null: none is left, or nothing can be counted back
 * @param seenNow whether there is something to see: it is sown, or what comes next is due
 * @param mayTakeBack whether its withdrawal may be taken back
 * @param seed how it stands with its seed; null once it is sown
 * @param alsoToKnow sentences of its season
 * @param learned what the group's own sowings say of its crop, or empty
 * @param moves what moved its dates
 * @param instead what is still in time, where this is too late
 * @param again where the visitor asks for the same again; null where it is not theirs, or is still to be sown
 * @param messages what people wrote about it, the newest first
 */
record SowingPage(
        History history,
        Sowing sowing,
        Progress progress,
        Map<UUID, List<Photo>> photos,
        Map<UUID, Typist> typists,
        List<NotedProblem> noted,
        Map<UUID, List<ProblemAnswer>> answers,
        boolean mayTakeOut,
        RequestStore.@Nullable Decided decided,
        @Nullable Stay stay,
        @Nullable TimelineStep next,
        boolean seenNow,
        boolean mayWithdraw,
        boolean mayTakeBack,
        @Nullable SeedStanding seed,
        @Nullable Timeline timeline,
        List<String> alsoToKnow,
        List<StepLine> steps,
        String learned,
        int dayCount,
        List<Redating.Move> moves,
        boolean tooLate,
        List<StillInTime.Other> instead,
        @Nullable String again,
        List<MessageStore.Message> messages) {}
