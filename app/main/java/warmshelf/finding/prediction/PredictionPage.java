package warmshelf.finding.prediction;

import java.util.List;
import java.util.Locale;
import warmshelf.words.Units;

/** What was told and what was seen, as one page. */
record PredictionPage(Emergence emergence, Plants plants, PlantingOut plantingOut, Frost frost) {
    /** What is said of a crop. */
    record CropLine(String id, String name, String words) {}

    record Emergence(List<String> words, List<ChancePoint> points, List<CropLine> crops) {
        static Emergence of(EmergencePredictions found) {
            return new Emergence(
                    PredictionWords.of(found),
                    found.ranges().stream().map(ChancePoint::of).toList(),
                    found.crops().stream()
                            .map(each -> new CropLine(
                                    each.crop().id(),
                                    each.crop().name(),
                                    "%d sowings: %s".formatted(each.sowings(), PredictionWords.of(each))))
                            .toList());
        }
    }

    /**
     * @param wanted chances of the plants wanted, each of about as many sowings
     * @param brier how far these chances were off, for example '0.11'; empty where nothing has ended
     */
    record Plants(
            List<String> words,
            List<ChancePoint> points,
            List<ChancePoint> wanted,
            String brier,
            List<CropLine> crops) {
        static Plants of(PlantPredictions found) {
            return new Plants(
                    PredictionWords.of(found),
                    found.ranges().stream().map(ChancePoint::of).toList(),
                    found.wanted().stream()
                            .flatMap(wanted -> wanted.bins().stream())
                            .map(bin -> ChancePoint.of("", bin.chance(), bin.came()))
                            .toList(),
                    found.wanted()
                            .map(wanted -> String.format(Locale.ROOT, "%.2f", wanted.brier()))
                            .orElse(""),
                    found.crops().stream()
                            .map(each ->
                                    new CropLine(each.crop().id(), each.crop().name(), PredictionWords.of(each)))
                            .toList());
        }
    }

    record PlantingOut(List<String> words, List<CropLine> crops) {
        static PlantingOut of(PlantingOutPredictions found) {
            return new PlantingOut(
                    PredictionWords.of(found),
                    found.crops().stream()
                            .map(each ->
                                    new CropLine(each.crop().id(), each.crop().name(), PredictionWords.of(each)))
                            .toList());
        }
    }

    record Frost(List<String> words, List<ChancePoint> points) {
        static Frost of(FrostPredictions found, Units units) {
            return new Frost(
                    PredictionWords.of(found),
                    found.risks().stream()
                            .map(risk -> ChancePoint.of(
                                    "%s, %s"
                                            .formatted(
                                                    units.fineTemperature(
                                                            risk.threshold().celsius()),
                                                    PredictionWords.seasons(risk.side())),
                                    risk.chance(),
                                    risk.came()))
                            .toList());
        }
    }
}
