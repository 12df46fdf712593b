package warmshelf.guide;

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
        facts.add(new Fact("Comfortable", comfortable + days(response, units)));
        depth(crop, units).ifPresent(words -> facts.add(new Fact("Depth", words)));
        light(crop).ifPresent(words -> facts.add(new Fact("Light", words)));
        if (HeatNeed.isKeptOffMats(crop)) {
            facts.add(new Fact(
                    "Mat", "none: room temperature, about %s or cooler".formatted(units.temperature(HeatNeed.ROOM_C))));
        }
        switch (BagFit.of(crop)) {
            case TOO_FINE -> facts.add(new Fact("Bag", "none: the seed is too fine to be moved"));
            case ROOTS_STAY -> facts.add(new Fact("Bag", "none: its roots bear no moving"));
            case FITS -> {}
        }
        String treatment = new TreatmentWords(units).of(crop.treatment());
        if (!treatment.isEmpty()) {
            facts.add(new Fact("Before sowing", treatment));
        }
        return facts;
    }

    private static String days(TemperatureResponse response, Units units) {
        Optional<Emergence> best = response.at(response.bestC());
        return best.map(emergence -> "; half is up in about %d days at %s"
                        .formatted(Math.round(emergence.days()), units.temperature(response.bestC())))
                .orElse("");
    }

    private static Optional<String> depth(Crop crop, Units units) {
        Double depth = crop.depthMm();
        if (depth == null) {
            return Optional.empty();
        }
        String common = crop.commonPractice().contains(CropFigure.DEPTH) ? " (common practice)" : "";
        if (depth == 0) {
            return Optional.of("on the surface" + common);
        }
        String cover = units.length(depth) + common;
        return Optional.of(
                crop.light().isNeeded()
                        ? cover + ", or on the surface under a dusting of vermiculite, for the light"
                        : cover);
    }

    private static Optional<String> light(Crop crop) {
        return switch (crop.light()) {
            case NEEDED -> Optional.of("needs light to come up: a lamp or daylight, from sowing on");
            case DARK -> Optional.of("keep it dark until it is up: cover it well");
            case INDIFFERENT -> Optional.of("comes up in light and in the dark");
            case NOT_KNOWN -> Optional.empty();
        };
    }

    private static List<Fact> plants(Crop crop, Units units) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Indoors", weeks(crop) + " before planting out"));
        Double night = crop.nightMinimumC();
        if (night != null) {
            String common = crop.commonPractice().contains(CropFigure.NIGHT) ? " (common practice)" : "";
            facts.add(new Fact("Nights, to go out", "above " + units.temperature(night) + common));
        }
        ColdLimit limit = ColdLimit.of(crop);
        if (!limit.frostKills()) {
            facts.add(new Fact("Bears, hardened off", units.temperature(limit.bearsC())));
        }
        BoltingLimit.of(crop)
                .ifPresent(bolting -> facts.add(new Fact(
                        "Flowers early",
                        "after about %s of nights under %s while young"
                                .formatted(Counted.days(bolting.days()), units.temperature(bolting.belowC())))));
        return facts;
    }

    private static String weeks(Crop crop) {
        return crop.weeksIndoorsMin() == crop.weeksIndoorsMax()
                ? crop.weeksIndoorsMin() + " weeks"
                : "%d to %d weeks".formatted(crop.weeksIndoorsMin(), crop.weeksIndoorsMax());
    }
}
