package warmshelf.demo;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.SpaceRequest;
import warmshelf.crop.Crop;
import warmshelf.sowing.Asking;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingPlanner;
import warmshelf.sowing.SowingStage;
import warmshelf.timeline.Seen;
import warmshelf.timeline.Step;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.TimelineStep;
import warmshelf.timeline.Verdict;

/**
 * Decides where the plants of a demo sowing go: outdoors where the grower's frost dates ask for a sowing about its day,
 * otherwise into the group's growing house, the crop's usual weeks after sowing. So the demo fits any day of the year.
 */
final class DemoPlanting {
    private static final int NEAR_DAYS = 21;
    /** Plants that are out, or about to go, by today must really be due by then. */
    private static final int NEAR_DAYS_WHEN_DONE = 3;

    private static final int DAYS_OF_CHOICE = 4;

    private final SowingPlanner planner;
    private final LocalDate today;
    private final int season;

    DemoPlanting(SowingPlanner planner, LocalDate today, int season) {
        this.planner = planner;
        this.today = today;
        this.season = season;
    }

    /** A decided sowing: what was asked, and the day it starts. */
    record Decided(Asking asking, LocalDate start) {}

    Decided decide(DemoSowing row, Sowing.Grower grower, Crop crop) {
        LocalDate start = today.plusDays(row.start());
        Asking outdoors = outdoors(row, grower, crop);
        if (row.spring()) {
            LocalDate inSpring = idealSowing(outdoors).orElse(today);
            if (inSpring.isAfter(today.plusDays(1))) {
                return new Decided(outdoors, inSpring);
            }
        }
        int near = row.furthest().compareTo(SowingStage.HARDENING_OFF) < 0 ? NEAR_DAYS : NEAR_DAYS_WHEN_DONE;
        Optional<LocalDate> ideal = idealSowing(outdoors);
        if (ideal.isPresent() && Math.abs(ideal.get().toEpochDay() - start.toEpochDay()) <= near) {
            return new Decided(outdoors, start);
        }
        LocalDate cover = start.plusDays(usualDaysIndoors(crop));
        Asking asking = new Asking(
                grower,
                crop,
                null,
                row.method(),
                row.warm(),
                season,
                crop.hardiness().usualRisk(),
                cover);
        return new Decided(asking, start);
    }

    /** What the request for warm space says on the day it is asked. */
    SpaceRequest request(java.util.UUID sowing, Decided decided, LocalDate askedOn, int quarters) {
        Asking asking = decided.asking();
        int celsius = planner.reckonedC(asking.crop(), true);
        Timeline timeline =
                planner.timeline(asking, celsius, askedOn, Seen.nothing()).orElseThrow();
        LocalDate start = decided.start();
        LocalDate earliest = start.minusDays(DAYS_OF_CHOICE);
        return new SpaceRequest(
                sowing,
                SpaceRequest.State.WAITING,
                earliest.isBefore(askedOn) ? askedOn : earliest,
                start,
                start.plusDays(DAYS_OF_CHOICE),
                Math.max(1, timeline.warmDays()),
                quarters,
                planner.band(asking.crop()),
                true,
                "",
                1);
    }

    private Asking outdoors(DemoSowing row, Sowing.Grower grower, Crop crop) {
        @Nullable LocalDate byFrost = null;
        return new Asking(
                grower,
                crop,
                null,
                row.method(),
                row.warm(),
                season,
                crop.hardiness().usualRisk(),
                byFrost);
    }

    /** The ideal day to sow, seen from long before it; empty where the season is too short for the crop. */
    private Optional<LocalDate> idealSowing(Asking asking) {
        LocalDate longBefore = LocalDate.of(asking.season() - 1, 10, 1);
        int celsius = planner.reckonedC(asking.crop(), asking.warm());
        return planner.timeline(asking, celsius, longBefore, Seen.nothing())
                .filter(timeline -> timeline.verdict() != Verdict.TOO_LATE)
                .flatMap(timeline -> timeline.step(Step.SOW))
                .map(TimelineStep::ideal);
    }

    private static int usualDaysIndoors(Crop crop) {
        return (crop.weeksIndoorsMin() + crop.weeksIndoorsMax()) * 7 / 2;
    }
}
