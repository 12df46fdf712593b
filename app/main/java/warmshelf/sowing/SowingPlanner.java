package warmshelf.sowing;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleToIntFunction;
import warmshelf.allocation.Band;
import warmshelf.crop.CelsiusRange;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Emergence;
import warmshelf.crop.HeatNeed;
import warmshelf.crop.LearnedEmergence;
import warmshelf.crop.LearnedWords;
import warmshelf.crop.Prospect;
import warmshelf.crop.ShiftedResponse;
import warmshelf.crop.TemperatureResponse;
import warmshelf.frost.FrostClimate;
import warmshelf.seed.HowToTest;
import warmshelf.timeline.FrostDates;
import warmshelf.timeline.NextPart;
import warmshelf.timeline.PlantingOut;
import warmshelf.timeline.SeasonPart;
import warmshelf.timeline.Seen;
import warmshelf.timeline.Slips;
import warmshelf.timeline.Step;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.TimelineQuestion;
import warmshelf.words.Units;

/** Works out the timeline of a sowing, asked for or under way. */
public final class SowingPlanner {
    /** Bottom heat for warm-season seed, 24-27 °C (75-80 °F): common practice; its middle. */
    public static final int USUAL_MAT_C = 26;
    /** What a sowing without bottom heat is reckoned at: a lived-in room, common practice. */
    public static final int ROOM_C = HeatNeed.ROOM_C;

    /** How long a place under a light is asked for where the timeline says nothing of hardening off. */
    private static final int USUAL_LIGHT_DAYS = 42;

    private final CropCatalogue crops;
    private final GrowerFrost frost;
    private final Learned learned;
    private final Units units;

    /** What this group's own sowings taught of a crop's emergence. */
    public interface Learned {
        LearnedEmergence of(Crop crop);
    }

    /** A planner by the published figures alone. */
    public SowingPlanner(CropCatalogue crops, GrowerFrost frost) {
        this(crops, frost, crop -> LearnedEmergence.NOTHING);
    }

    public SowingPlanner(CropCatalogue crops, GrowerFrost frost, Learned learned) {
        this(crops, frost, learned, Units.METRIC);
    }

    private SowingPlanner(CropCatalogue crops, GrowerFrost frost, Learned learned, Units units) {
        this.crops = crops;
        this.frost = frost;
        this.learned = learned;
        this.units = units;
    }

    /** The same planner, writing its reasons in the units of whoever reads them. */
    public SowingPlanner inUnits(Units reader) {
        return new SowingPlanner(crops, frost, learned, reader);
    }

    /** The units in which it writes. */
    Units units() {
        return units;
    }

    /** The set-points that suit a crop's seed; the usual one where nothing is known of the crop. */
    public Band band(Crop crop) {
        if (!crops.lists(crop)) {
            return new Band(USUAL_MAT_C, USUAL_MAT_C);
        }
        return Band.within(HeatNeed.onMat(crop, crops.responseOf(crop)));
    }

    /** What to do with a crop that nobody can sow; empty where it is raised from seed. */
    public Optional<String> insteadOfSowing(Crop crop) {
        return crops.lists(crop) ? Slips.insteadOfSowing(crop, units) : Optional.empty();
    }

    /** How a crop's seed is tested on damp paper, by its days here; empty where no table tells. */
    Optional<HowToTest> howToTest(Crop crop) {
        return crops.lists(crop) ? HowToTest.of(crop, responseTo(crop)) : Optional.empty();
    }

    /** The temperature a sowing is reckoned at until it is known which mat it lies on. */
    public int reckonedC(Crop crop, boolean warm) {
        return warm ? timedIn(crop, band(crop)).nearestDegree(USUAL_MAT_C) : ROOM_C;
    }

    /** Of the degrees that suit those for which days are published; all of them where there are none. */
    private Band timedIn(Crop crop, Band band) {
        if (!crops.lists(crop)) {
            return band;
        }
        CelsiusRange timed = crops.responseOf(crop).timed();
        int low = Math.max(band.lowC(), (int) Math.ceil(timed.low()));
        int high = Math.min(band.highC(), (int) Math.floor(timed.high()));
        return low > high ? band : new Band(low, high);
    }

    /** When a crop's seed is expected to come up here, as published and shifted by what was learned. */
    public Optional<Emergence> emergence(Crop crop, double celsius) {
        return crops.lists(crop) ? responseTo(crop).at(celsius) : Optional.empty();
    }

    /** Whether a crop's seed needs a mat; of a crop nobody lists it is taken that it does. */
    HeatNeed heatNeed(Crop crop) {
        return crops.lists(crop) ? HeatNeed.of(crop, crops.responseOf(crop)) : HeatNeed.MAT;
    }

    /** What is published of whether it comes up at a temperature; of a crop nobody lists nothing is. */
    Prospect prospect(Crop crop, double celsius) {
        return crops.lists(crop) ? crops.responseOf(crop).prospect(celsius) : new Prospect.NotTested();
    }

    /** The same for a sowing, whose lot may be known better. */
    public Optional<Emergence> emergence(Sowing sowing, double celsius) {
        return emergence(Asking.of(sowing), celsius);
    }

    /** The same for what is asked for. */
    Optional<Emergence> emergence(Asking asking, double celsius) {
        return crops.lists(asking.crop()) ? responseTo(asking).at(celsius) : Optional.empty();
    }

    /** What earlier sowings say of when this one comes up, in a sentence; empty where they are too few. */
    String learnedOf(Sowing sowing, double celsius, Units units) {
        Crop crop = sowing.crop();
        return crops.lists(crop)
                ? crops.responseOf(crop)
                        .at(celsius)
                        .map(table -> LearnedWords.ofLot(
                                learned.of(crop), sowing.lotId(), table.days(), units.temperature(celsius)))
                        .orElse("")
                : "";
    }

    private TemperatureResponse responseTo(Crop crop) {
        return ShiftedResponse.of(crops.responseOf(crop), learned.of(crop).factor());
    }

    private TemperatureResponse responseTo(Asking asking) {
        Crop crop = asking.crop();
        LearnedEmergence here = learned.of(crop);
        return ShiftedResponse.of(
                crops.responseOf(crop), asking.lotId() == null ? here.factor() : here.factor(asking.lotId()));
    }

    /** The climate of a grower's garden; empty where nothing is known of it. */
    Optional<FrostClimate> climate(Sowing.Grower grower) {
        return frost.climate(grower.memberId(), grower.country(), grower.postcode());
    }

    /** What decides the day of planting out; empty where no frost dates are known and no day is named. */
    public Optional<PlantingOut> plantingOut(Asking asking) {
        if (asking.underCoverOn() != null) {
            return Optional.of(new PlantingOut.UnderCover(asking.underCoverOn()));
        }
        Optional<FrostDates> dates = frost.dates(asking.grower(), asking.risk(), asking.season());
        return dates.map(known -> new PlantingOut.ByFrost(known, asking.part()));
    }

    /** The parts of the season for which it can be sown in the grower's garden, in their order. */
    List<SeasonPart> parts(Asking asking) {
        return asking.underCoverOn() != null
                ? List.of(SeasonPart.SPRING)
                : frost.dates(asking.grower(), asking.risk(), asking.season())
                        .map(dates -> dates.parts(asking.crop()))
                        .orElse(List.of(SeasonPart.SPRING));
    }

    /** The same asked for the first part of the season that is still in time, or the last where none is. */
    public Asking inNextPart(Asking asking, double celsius, LocalDate today) {
        return NextPart.of(
                        asking.crop(), parts(asking), part -> timeline(asking.in(part), celsius, today, Seen.nothing()))
                .map(timeline -> asking.in(timeline.season().part()))
                .orElse(asking);
    }

    /** The timeline of something asked for at a temperature; empty too where nothing is known of the crop. */
    public Optional<Timeline> timeline(Asking asking, double celsius, LocalDate today, Seen seen) {
        if (!crops.lists(asking.crop())) {
            return Optional.empty();
        }
        TemperatureResponse response = responseTo(asking);
        return plantingOut(asking)
                .map(out -> Timeline.plan(new TimelineQuestion(
                        asking.crop(),
                        response,
                        asking.method(),
                        out,
                        asking.warm(),
                        celsius,
                        today,
                        seen,
                        asking.soaks(),
                        asking.seedsToACell(),
                        units)));
    }

    /** The timeline of a sowing, re-dated from what was seen. */
    public Optional<Timeline> timeline(Sowing sowing, Progress progress, double celsius, LocalDate today) {
        return timeline(Asking.of(sowing), celsius, today, progress.seen());
    }

    /** The same with what is known of its places: what has no light of the group's after the heat goes home. */
    public Optional<Timeline> timeline(History history, LocalDate today) {
        Optional<Timeline> timeline = timeline(history.sowing(), history.progress(), history.celsius(this), today);
        return HomeWithIt.of(history)
                .map(home -> timeline.map(dates -> dates.goingHome(home.by(), home.done(), units())))
                .orElse(timeline);
    }

    /** Days on a mat by its set-point; a temperature at which nothing comes up is never asked for by a fitting band. */
    public DoubleToIntFunction daysAt(Asking asking, LocalDate today, int otherwise) {
        // A search for space asks for the same few temperatures again and again.
        Map<Double, Integer> known = new HashMap<>();
        return celsius -> known.computeIfAbsent(celsius, degrees -> warmDays(asking, degrees, today, otherwise));
    }

    /** Days under a light, from coming off the heat until hardening off begins. */
    public int lightDays(Asking asking, LocalDate today) {
        int celsius = reckonedC(asking.crop(), asking.warm());
        return timeline(asking, celsius, today, Seen.nothing())
                .flatMap(SowingPlanner::lightDays)
                .filter(days -> days > 0)
                .orElse(USUAL_LIGHT_DAYS);
    }

    private static Optional<Integer> lightDays(Timeline timeline) {
        return timeline.step(Step.SOW)
                .flatMap(sow -> timeline.step(Step.HARDEN_OFF)
                        .map(harden ->
                                (int) ChronoUnit.DAYS.between(sow.ideal(), harden.ideal()) - timeline.warmDays()));
    }

    private int warmDays(Asking asking, double celsius, LocalDate today, int otherwise) {
        return timeline(asking, celsius, today, Seen.nothing())
                .map(Timeline::warmDays)
                .filter(days -> days > 0)
                .orElse(otherwise);
    }
}
