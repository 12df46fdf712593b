package warmshelf.finding.season;

import static warmshelf.finding.season.SeasonSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.SeenEmergence;
import warmshelf.sowing.EmergenceStore;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;

/** Days to emergence as they were told, against what was seen. */
public final class PredictionPages implements Pages {
    private static final double LEFT = 44;
    private static final double SIDE = 180;
    private static final double BOTTOM = 190;

    private final EmergenceStore emergence;
    private final CropCatalogue crops;

    public PredictionPages(EmergenceStore emergence, CropCatalogue crops) {
        this.emergence = emergence;
        this.crops = crops;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/findings/predictions", this::show, Role.MEMBER);
    }

    private void show(Context ctx) {
        Map<Crop, List<SeenEmergence>> seen = new LinkedHashMap<>();
        emergence.seen().forEach((id, sowings) -> crops.find(id).ifPresent(crop -> seen.put(crop, sowings)));
        Predictions predictions = Predictions.of(seen, crops::responseOf);
        Respond.page(
                ctx,
                "finding/season/predictions.peb",
                new PredictionPage(
                        predictions.widest().map(PredictionPages::held).orElseGet(SAY::nothingPredicted),
                        predictions.ranges().stream().map(PredictionPages::line).toList(),
                        predictions.crops().stream().map(PredictionPages::line).toList()));
    }

    /** @param words the answer, or why there is none */
    private record PredictionPage(String words, List<RangeLine> ranges, List<CropLine> crops) {}

    /**
     * A told chance and how often it held, in figures and in pixels of the picture.
     *
     * @param high of the interval's upper end, which lies above its lower one
     */
    private record RangeLine(
            int told, int held, int of, int percent, String interval, String x, String y, String low, String high) {}

    private record CropLine(String id, String name, int sowings, String words) {}

    private static String held(Predictions.Range range) {
        return SAY.rangeHeld(
                percent(range.chance()),
                range.held().came(),
                range.held().of(),
                SeasonFindingPage.range(range.held().wilson()));
    }

    private static RangeLine line(Predictions.Range range) {
        return new RangeLine(
                percent(range.chance()),
                range.held().came(),
                range.held().of(),
                percent(range.held().value()),
                SeasonFindingPage.range(range.held().wilson()),
                pixel(LEFT + SIDE * range.chance()),
                pixel(y(range.held().value())),
                pixel(y(range.held().wilson().low())),
                pixel(y(range.held().wilson().high())));
    }

    private static double y(double share) {
        return BOTTOM - SIDE * share;
    }

    private static String pixel(double at) {
        return String.format(Locale.ROOT, "%.1f", at);
    }

    private static int percent(double share) {
        return (int) Math.round(100 * share);
    }

    private static CropLine line(Predictions.OfCrop of) {
        String times = String.format(Locale.ROOT, "%.2f", of.ratio());
        String words =
                of.differs() ? of.ratio() > 1 ? SAY.slowerHere(times) : SAY.fasterHere(times) : SAY.asPublished(times);
        return new CropLine(of.crop().id(), of.crop().name(), of.sowings(), words);
    }
}
