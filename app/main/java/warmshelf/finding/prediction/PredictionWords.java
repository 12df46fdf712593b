package warmshelf.finding.prediction;

import static warmshelf.finding.prediction.PredictionSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import warmshelf.finding.ShareWords;
import warmshelf.finding.statistics.Calibration;
import warmshelf.finding.statistics.ObservedShare;
import warmshelf.frost.Threshold;
import warmshelf.frost.station.Side;
import warmshelf.words.Counted;
import warmshelf.words.Numbers;

/** What came of predictions, in sentences. */
final class PredictionWords {
    /** With fewer cases nearly every share fits nearly every chance. */
    private static final int FEW = 8;

    /** The risk that tender plants are usually planted at. */
    private static final double USUAL_RISK = 0.1;

    private PredictionWords() {}

    static List<String> of(EmergencePredictions emergence) {
        return emergence
                .widest()
                .map(range -> List.of(
                        SAY.emergenceHeld(
                                ShareWords.percent(range.chance()),
                                range.held().came(),
                                range.held().of(),
                                range(range.held())),
                        verdict(emergence.ranges())))
                .orElseGet(() -> List.of(SAY.noEmergence()));
    }

    static String of(EmergencePredictions.OfCrop crop) {
        String times = String.format(Locale.ROOT, "%.2f", crop.ratio());
        if (!crop.differs()) {
            return SAY.asPublished(times);
        }
        return crop.ratio() > 1 ? SAY.slowerHere(times) : SAY.fasterHere(times);
    }

    static List<String> of(PlantPredictions plants) {
        List<String> words = new ArrayList<>();
        if (plants.sowings().isEmpty()) {
            words.add(SAY.noPlants());
        } else {
            words.add(SAY.plantsSummed(
                    sowings(plants.sowings().size()),
                    (int) Math.round(plants.sowings().stream()
                            .mapToDouble(each -> each.told().expected())
                            .sum()),
                    plants.sowings().stream().mapToInt(PlantPrediction::seen).sum()));
            ToldRange widest = plants.ranges().get(plants.ranges().size() - 1);
            words.add(SAY.plantsHeld(
                    ShareWords.percent(widest.chance()),
                    widest.held().came(),
                    widest.held().of(),
                    range(widest.held())));
            words.add(verdict(plants.ranges()));
            plants.wanted().map(PredictionWords::wanted).ifPresent(words::add);
        }
        if (plants.leftOut() > 0) {
            words.add(SAY.plantsLeftOut(sowings(plants.leftOut())));
        }
        return words;
    }

    private static String wanted(Calibration wanted) {
        int had = wanted.bins().stream().mapToInt(bin -> bin.came().came()).sum();
        int of = wanted.bins().stream().mapToInt(bin -> bin.came().of()).sum();
        double told = wanted.bins().stream()
                        .mapToDouble(bin -> bin.chance() * bin.came().of())
                        .sum()
                / of;
        return SAY.plantsWanted(ShareWords.percent(told), had, of, range(new ObservedShare(had, of)));
    }

    static String of(PlantPredictions.OfCrop crop) {
        return "%s: %s"
                .formatted(
                        SAY.cropPlants(sowings(crop.sowings()), (int) Math.round(crop.told()), crop.seen()),
                        crop.differs() ? SAY.moreThanChance() : SAY.withinChance());
    }

    static List<String> of(PlantingOutPredictions out) {
        Optional<ObservedShare> within = out.within();
        if (within.isEmpty()) {
            return List.of(SAY.noPlantingOut());
        }
        String held = SAY.plantingOutWithin(within.get().came(), within.get().of(), range(within.get()));
        String later = out.later()
                .map(mean -> SAY.plantingOutLater(
                        moved(mean.mean()),
                        signed(mean.interval().low()),
                        signed(mean.interval().high())))
                .orElseGet(() -> SAY.plantingOutFew(PlantingOutPredictions.FEWEST));
        return List.of(held, later);
    }

    static String of(PlantingOutPredictions.OfCrop crop) {
        return "%s: %s"
                .formatted(
                        SAY.cropPlantingOut(
                                sowings(crop.within().of()),
                                crop.within().came(),
                                moved(crop.later().mean())),
                        crop.later().differsFromZero() ? SAY.moreThanChance() : SAY.withinChance());
    }

    private static String signed(double days) {
        return Numbers.oneDecimal(days).replace('-', '\u2212');
    }

    private static String moved(double days) {
        long whole = Math.round(Math.abs(days));
        if (whole == 0) {
            return SAY.onTheDay();
        }
        return days > 0 ? SAY.daysLater(Counted.days(whole)) : SAY.daysEarlier(Counted.days(whole));
    }

    static List<String> of(FrostPredictions frost) {
        List<String> words = new ArrayList<>();
        for (FrostPredictions.ToldRisk risk : frost.risks()) {
            if (risk.chance() == USUAL_RISK && risk.threshold() == Threshold.FROST) {
                words.add(sentence(risk));
                words.add(risk(risk));
            }
        }
        if (words.isEmpty()) {
            return List.of(SAY.noFrost());
        }
        words.add(SAY.frostShared());
        return words;
    }

    private static String sentence(FrostPredictions.ToldRisk risk) {
        int chance = ShareWords.percent(risk.chance());
        ObservedShare came = risk.came();
        return risk.side() == Side.SPRING
                ? SAY.springRisk(chance, came.came(), came.of(), range(came))
                : SAY.autumnRisk(chance, came.came(), came.of(), range(came));
    }

    private static String risk(FrostPredictions.ToldRisk risk) {
        ObservedShare came = risk.came();
        if (came.of() < FEW) {
            return SAY.fewToJudge(FEW);
        }
        if (came.wilson().holds(risk.chance())) {
            return SAY.fits();
        }
        return came.value() > risk.chance() ? SAY.frostMore() : SAY.frostLess();
    }

    static String seasons(Side side) {
        return side == Side.SPRING ? SAY.springSeasons() : SAY.autumnSeasons();
    }

    /** Of all the ranges: a narrow one may hold too often though the widest does as told. */
    private static String verdict(List<ToldRange> ranges) {
        if (ranges.get(0).held().of() < FEW) {
            return SAY.fewToJudge(FEW);
        }
        return ranges.stream()
                .filter(range -> !range.held().wilson().holds(range.chance()))
                .findFirst()
                .map(range -> range.held().value() < range.chance() ? SAY.heldLess() : SAY.heldMore())
                .orElseGet(SAY::fits);
    }

    private static String range(ObservedShare share) {
        return ShareWords.range(share.wilson());
    }

    private static String sowings(int count) {
        return Counted.of(count, "sowing", "sowings");
    }
}
