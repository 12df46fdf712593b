package warmshelf.demo;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.SpaceRequest;
import warmshelf.crop.Crop;
import warmshelf.sowing.Asking;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingPlanner;
import warmshelf.sowing.SowingStage;
import warmshelf.timeline.SeasonPart;
import warmshelf.timeline.Seen;
import warmshelf.timeline.Timeline;

/** Asks for the demo's sowings as its people did: each for the grower's own garden, by the frost dates there. */
final class DemoPlanting {
    private static final int DAYS_OF_CHOICE = 4;

    private final SowingPlanner planner;
    private final LocalDate today;
    private final int season;

    DemoPlanting(SowingPlanner planner, LocalDate today, int season) {
        this.planner = planner;
        this.today = today;
        this.season = season;
    }

    Asking asking(DemoSowing row, Sowing.Grower grower, Crop crop) {
        return new Asking(
                grower,
                crop,
                null,
                row.method(),
                row.warm(),
                season,
                SeasonPart.SPRING,
                crop.hardiness().usualRisk(),
                coldFrame(row, crop));
    }

    /** What wants weeks of cold first comes too late for spring by then: it goes into a cold frame; null: outdoors. */
    private @Nullable LocalDate coldFrame(DemoSowing row, Crop crop) {
        return row.furthest() == SowingStage.CHILLED ? start(row).plusWeeks(crop.weeksIndoorsMax()) : null;
    }

    LocalDate start(DemoSowing row) {
        return today.plusDays(row.start());
    }

    /** What the request for warm space says on the day it is asked. */
    SpaceRequest request(UUID sowing, Asking asking, DemoSowing row, LocalDate askedOn) {
        int celsius = planner.reckonedC(asking.crop(), true);
        Timeline timeline =
                planner.timeline(asking, celsius, askedOn, Seen.nothing()).orElseThrow();
        LocalDate start = start(row);
        LocalDate earliest = start.minusDays(DAYS_OF_CHOICE);
        return new SpaceRequest(
                sowing,
                SpaceRequest.State.WAITING,
                earliest.isBefore(askedOn) ? askedOn : earliest,
                start,
                start.plusDays(DAYS_OF_CHOICE),
                Math.max(1, timeline.warmDays()),
                row.container().quarters(),
                planner.band(asking.crop()),
                true,
                asking.crop().light().isNeeded(),
                "",
                1);
    }
}
