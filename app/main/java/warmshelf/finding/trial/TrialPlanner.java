package warmshelf.finding.trial;

import static warmshelf.finding.trial.TrialSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Band;
import warmshelf.allocation.FirstFit;
import warmshelf.allocation.SpaceAnswer;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.SpaceWish;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Emergence;
import warmshelf.crop.Hardiness;
import warmshelf.seed.Lot;
import warmshelf.sowing.Asking;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingPlanner;
import warmshelf.sowing.SowingStage;
import warmshelf.sowing.Survival;
import warmshelf.timeline.SeasonPart;
import warmshelf.words.Units;

/** Makes of a trial what is asked for by it: for each way of a block a sowing, and a request for a place on the day. */
public final class TrialPlanner {
    private final SowingPlanner planner;
    private final CropCatalogue crops;
    private final Units units;

    public TrialPlanner(SowingPlanner planner, CropCatalogue crops, Units units) {
        this.planner = planner.inUnits(units);
        this.crops = crops;
        this.units = units;
    }

    /**
     * Whose block it is and when it is sown.
     *
     * @param risk the chance of a later frost that the grower accepts for the crop, 0 to 1
     */
    public record Carried(Sowing.Grower grower, int season, double risk, LocalDate today, LocalDate sowOn) {}

    /** What of a trial is the same in all its blocks. */
    public record Question(TrialKind kind, Lot lot, List<TrialWay> ways, int seedsEach, double share) {
        public static Question of(TrialDesign design, double share) {
            return new Question(design.kind(), design.lot(), design.ways(), design.seedsEach(), share);
        }

        public static Question of(Trial trial, double share) {
            return new Question(trial.kind(), trial.lot(), trial.ways(), trial.seedsEach(), share);
        }
    }

    Crop crop(Lot lot) {
        return crops.ofVariety(lot.cropId(), lot.variety());
    }

    /** The risk of a later frost that is reckoned with where the member has not said another. */
    Hardiness hardiness(Lot lot) {
        return crop(lot).hardiness();
    }

    /** Why the crop cannot be tried; empty where it can. */
    Optional<String> problem(Lot lot, List<TrialWay> ways) {
        Crop crop = crop(lot);
        Optional<String> slips = planner.insteadOfSowing(crop).map(instead -> SAY.notSown(crop.name(), instead));
        return slips.isPresent()
                ? slips
                : ways.stream()
                        .filter(way -> emergence(crop, way).isEmpty())
                        .findFirst()
                        .map(way -> SAY.notComingUp(crop.name(), units.temperature(celsius(crop, way))));
    }

    /** When the slowest of some ways is expected to come up; each of them can be told. */
    Emergence slowest(Lot lot, List<TrialWay> ways) {
        Crop crop = crop(lot);
        return ways.stream()
                .flatMap(way -> emergence(crop, way).stream())
                .max(java.util.Comparator.comparingDouble(Emergence::days))
                .orElseThrow();
    }

    private Optional<Emergence> emergence(Crop crop, TrialWay way) {
        return planner.emergence(crop, celsius(crop, way));
    }

    private double celsius(Crop crop, TrialWay way) {
        Integer asked = way.celsius();
        return asked == null ? planner.reckonedC(crop, way.warm()) : asked;
    }

    /** One block: a sowing for each way, in the order of the ways. */
    public List<PlannedWay> block(Question question, Carried carried, int number, TrialDraw draw) {
        List<PlannedWay> planned = new ArrayList<>();
        for (TrialWay way : question.ways()) {
            String name = way.name(question.kind(), units);
            String note = question.kind().liesTogether()
                    ? SAY.blockNote(number, way.letter(), name, draw.places())
                    : SAY.blockNoteApart(number, way.letter(), name);
            Sowing sowing = sowing(question, carried, way, note);
            planned.add(new PlannedWay(way, sowing, request(sowing, carried, way)));
        }
        return planned;
    }

    /**
     * Which ways of some blocks have no place that day, each with why; what was found for one way counts as taken for the next.
     *
     * @param board the mats as they stand; places found are laid on it
     */
    List<String> withoutRoom(List<PlannedWay> planned, SpaceCalendar board, LocalDate today) {
        List<String> without = new ArrayList<>();
        for (PlannedWay each : planned) {
            SpaceRequest request = each.request();
            if (request == null) {
                continue;
            }
            SpaceWish wish = new SpaceWish(
                    request.sowingId(),
                    request.quarters(),
                    request.earliest(),
                    request.ideal(),
                    request.latest(),
                    request.band(),
                    request.needsLight(),
                    planner.daysAt(Asking.of(each.sowing()), today, request.days()));
            SpaceAnswer answer = new FirstFit(board, today).answer(wish);
            if (answer instanceof SpaceAnswer.Space space) {
                board.accept(space.offer());
            } else if (answer instanceof SpaceAnswer.None none) {
                without.add(SAY.noRoom(each.way().letter(), none.reason().words(units)));
            }
        }
        return without;
    }

    private Sowing sowing(Question question, Carried carried, TrialWay way, String note) {
        Lot lot = question.lot();
        int seeds = question.seedsEach();
        double plants = seeds * question.share() * Survival.COMMON_PRACTICE.share();
        return new Sowing(
                UUID.randomUUID(),
                carried.grower(),
                carried.season(),
                part(question, carried),
                crop(lot),
                lot.id(),
                lot.variety(),
                lot.treated(),
                (int) Math.max(1, Math.round(plants)),
                way.method(),
                way.warm(),
                way.container(seeds),
                seeds,
                1,
                seeds,
                carried.risk(),
                null,
                SowingStage.PLANNED,
                note,
                1,
                null);
    }

    /** For the part of the season that is next, as whatever is asked for. */
    private SeasonPart part(Question question, Carried carried) {
        TrialWay first = question.ways().get(0);
        Crop crop = crop(question.lot());
        Asking asking = new Asking(
                carried.grower(),
                crop,
                question.lot().id(),
                first.method(),
                first.warm(),
                carried.season(),
                SeasonPart.SPRING,
                carried.risk(),
                null);
        return planner.inNextPart(asking, celsius(crop, first), carried.today()).part();
    }

    private @Nullable SpaceRequest request(Sowing sowing, Carried carried, TrialWay way) {
        if (!way.warm()) {
            return null;
        }
        Crop crop = sowing.crop();
        double celsius = celsius(crop, way);
        int otherwise = emergence(crop, way)
                .map(emergence -> (int) Math.ceil(emergence.days95()))
                .orElse(1);
        int days = planner.daysAt(Asking.of(sowing), carried.today(), otherwise).applyAsInt(celsius);
        Integer asked = way.celsius();
        return new SpaceRequest(
                sowing.id(),
                SpaceRequest.State.WAITING,
                carried.sowOn(),
                carried.sowOn(),
                carried.sowOn(),
                days,
                sowing.container().quarters(),
                asked == null ? planner.band(crop) : new Band(asked, asked),
                true,
                crop.light().isNeeded(),
                "",
                1);
    }
}
