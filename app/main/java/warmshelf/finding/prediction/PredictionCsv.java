package warmshelf.finding.prediction;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import warmshelf.table.TableShape;
import warmshelf.table.TableWriter;

/** Predictions and what was seen, as tables. */
final class PredictionCsv {
    private static final double HALF = 0.5;
    private static final double THIRD = 0.3;
    private static final double TENTH = 0.1;

    private PredictionCsv() {}

    /** One row for each sowing of which it is known when half had come. */
    static void emergence(Appendable out, TableShape shape, EmergencePredictions found) throws IOException {
        TableWriter csv = new TableWriter(
                out,
                shape,
                List.of("sowing", "crop", "method", "celsius", "days_published", "days_seen", "after_days", "by_days"));
        for (EmergencePredictions.OfSowing each : found.sowings()) {
            csv.row(
                    each.seen().sowingId(),
                    each.crop().id(),
                    each.seen().method().word(),
                    rounded(each.seen().celsius(), 1),
                    rounded(each.check().publishedDays(), 1),
                    rounded(each.check().seenDays(), 1),
                    rounded(each.seen().afterDays(), 1),
                    rounded(each.seen().byDays(), 1));
        }
    }

    /** One row for each sowing that has ended and was counted. */
    static void plants(Appendable out, TableShape shape, PlantPredictions found) throws IOException {
        TableWriter csv = new TableWriter(
                out,
                shape,
                List.of(
                        "sowing",
                        "season",
                        "crop",
                        "seeds",
                        "plants_told",
                        "low_90",
                        "high_90",
                        "plants_wanted",
                        "chance_of_wanted",
                        "plants_seen"));
        for (PlantPrediction each : found.sowings()) {
            csv.row(
                    each.sowingId(),
                    each.season(),
                    each.crop().id(),
                    each.seeds(),
                    rounded(each.told().expected(), 1),
                    each.low(),
                    each.high(),
                    each.wanted(),
                    rounded(each.chanceOfWanted(), 3),
                    each.seen());
        }
    }

    /** One row for each sowing that went out and had a day planned. */
    static void plantingOut(Appendable out, TableShape shape, PlantingOutPredictions found) throws IOException {
        TableWriter csv = new TableWriter(
                out,
                shape,
                List.of(
                        "sowing",
                        "season",
                        "crop",
                        "planned_earliest",
                        "planned",
                        "planned_latest",
                        "planted_out_on",
                        "days_later"));
        for (PlantingOutPrediction each : found.sowings()) {
            csv.row(
                    each.sowingId(),
                    each.season(),
                    each.crop().id(),
                    each.earliest(),
                    each.ideal(),
                    each.latest(),
                    each.seen(),
                    each.daysLater());
        }
    }

    /** One row for each spring and each autumn of each thermometer, at each temperature. */
    static void frost(Appendable out, TableShape shape, FrostPredictions found) throws IOException {
        TableWriter csv = new TableWriter(
                out,
                shape,
                List.of(
                        "thermometer",
                        "year",
                        "side",
                        "threshold_celsius",
                        "told_50",
                        "told_30",
                        "told_10",
                        "frost_seen_on"));
        for (FrostPrediction each : found.seasons()) {
            csv.row(
                    each.thermometer(),
                    each.year(),
                    each.side().name().toLowerCase(Locale.ROOT),
                    each.threshold().celsius(),
                    day(each, HALF),
                    day(each, THIRD),
                    day(each, TENTH),
                    each.seen());
        }
    }

    private static @Nullable LocalDate day(FrostPrediction each, double chance) {
        return each.day(chance).orElse(null);
    }

    private static BigDecimal rounded(double figure, int decimals) {
        return BigDecimal.valueOf(figure).setScale(decimals, RoundingMode.HALF_UP);
    }
}
