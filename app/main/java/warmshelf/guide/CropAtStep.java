package warmshelf.guide;

import static warmshelf.guide.GuideSentences.SAY;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import warmshelf.crop.BagFit;
import warmshelf.crop.BoltingLimit;
import warmshelf.crop.ColdLimit;
import warmshelf.crop.Crop;
import warmshelf.crop.CropFigure;
import warmshelf.crop.Emergence;
import warmshelf.crop.HeatNeed;
import warmshelf.crop.TemperatureResponse;
import warmshelf.crop.TreatmentWords;
import warmshelf.words.Counted;
import warmshelf.words.Units;

/**
 * What one crop wants at a step.
 *
 * @param source of the crop's row
 */
public record CropAtStep(Crop crop, List<Fact> facts, Source source) {
    private static final Set<Topic> OF_SEED = EnumSet.of(
            Topic.SEED_TEST,
            Topic.SOAK,
            Topic.SOW,
            Topic.COVERING,
            Topic.BOTTOM_HEAT,
            Topic.FIRST_LOOK,
            Topic.MOVE_TO_CELLS);

    public CropAtStep {
        facts = List.copyOf(facts);
    }

    /** One of them, such as 'Depth' and '0.6 cm'. */
    public record Fact(String name, String words) {}

    static CropAtStep of(Topic topic, Crop crop, TemperatureResponse response, Units units) {
        List<Fact> facts = OF_SEED.contains(topic) ? seed(crop, response, units) : plants(crop, units);
        return new CropAtStep(crop, facts, Source.of(crop.source(), crop.sourceUrl(), crop.standing()));
    }

    private static List<Fact> seed(Crop crop, TemperatureResponse response, Units units) {
        List<Fact> facts = new ArrayList<>();
        String comfortable = units.temperatureRange(
                response.comfortable().low(), response.comfortable().high());
        facts.add(new Fact(SAY.comfortable(), withDays(comfortable, response, units)));
        depth(crop, units).ifPresent(words -> facts.add(new Fact(SAY.depth(), words)));
        light(crop).ifPresent(words -> facts.add(new Fact(SAY.light(), words)));
        if (HeatNeed.isKeptOffMats(crop)) {
            facts.add(new Fact(SAY.mat(), SAY.noMat(units.temperature(HeatNeed.ROOM_C))));
        }
        switch (BagFit.of(crop)) {
            case TOO_FINE -> facts.add(new Fact(SAY.bag(), SAY.noBagTooFine()));
            case ROOTS_STAY -> facts.add(new Fact(SAY.bag(), SAY.noBagRootsStay()));
            case FITS -> {}
        }
        String treatment = new TreatmentWords(units).of(crop.treatment());
        if (!treatment.isEmpty()) {
            facts.add(new Fact(SAY.beforeSowing(), treatment));
        }
        return facts;
    }

    private static String withDays(String comfortable, TemperatureResponse response, Units units) {
        Optional<Emergence> best = response.at(response.bestC());
        return best.map(emergence ->
                        SAY.halfIsUp(comfortable, Math.round(emergence.days()), units.temperature(response.bestC())))
                .orElse(comfortable);
    }

    private static Optional<String> depth(Crop crop, Units units) {
        Double depth = crop.depthMm();
        if (depth == null) {
            return Optional.empty();
        }
        String cover = said(crop, CropFigure.DEPTH, depth == 0 ? SAY.onTheSurface() : units.length(depth));
        return Optional.of(depth > 0 && crop.light().isNeeded() ? SAY.orOnTheSurface(cover) : cover);
    }

    private static Optional<String> light(Crop crop) {
        return switch (crop.light()) {
            case NEEDED -> Optional.of(SAY.needsLight());
            case DARK -> Optional.of(SAY.keepDark());
            case INDIFFERENT -> Optional.of(SAY.eitherWay());
            case NOT_KNOWN -> Optional.empty();
        };
    }

    private static List<Fact> plants(Crop crop, Units units) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(
                SAY.indoors(), SAY.beforePlantingOut(Counted.weeks(crop.weeksIndoorsMin(), crop.weeksIndoorsMax()))));
        Double night = crop.nightMinimumC();
        if (night != null) {
            facts.add(new Fact(SAY.nightsToGoOut(), said(crop, CropFigure.NIGHT, SAY.above(units.temperature(night)))));
        }
        ColdLimit limit = ColdLimit.of(crop);
        if (!limit.frostKills()) {
            facts.add(new Fact(SAY.bears(), units.temperature(limit.bearsC())));
        }
        BoltingLimit.of(crop)
                .ifPresent(bolting -> facts.add(new Fact(
                        SAY.flowersEarly(),
                        SAY.flowersAfter(Counted.days(bolting.days()), units.temperature(bolting.belowC())))));
        return facts;
    }

    /** The words of a figure, marked where it is common practice. */
    private static String said(Crop crop, CropFigure figure, String words) {
        return crop.commonPractice().contains(figure) ? SAY.commonPractice(words) : words;
    }
}
