package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Method;
import warmshelf.seed.SeedsToACell;
import warmshelf.timeline.SeasonPart;
import warmshelf.words.DayWords;
import warmshelf.words.FormReader;

/**
 * What Ask takes for granted until somebody changes it, each as a sentence.
 *
 * @param sown the method, the tray and the seeds to a cell
 * @param warm the heat, and what comes after it
 * @param out where the plants go, for which part of the season, and at what risk
 * @param note what a coordinator should know
 */
record AskAssumed(Assumption sown, Assumption warm, Assumption out, Assumption note) {
    private static final List<String> SOWN =
            List.of("method", "container", "trayLong", "trayShort", "cellsInATray", "seedsPerCell");
    private static final List<String> WARM = List.of("heat", "after");
    private static final List<String> OUT = List.of("where", "coverOn", "part", "risk");
    private static final List<String> NOTE = List.of("note");

    /**
     * One of them.
     *
     * @param words as a sentence
     * @param open whether something in it cannot be used, so that it stands unfolded
     */
    public record Assumption(String words, boolean open) {}

    /** What a form stands at. */
    static AskAssumed of(FormReader form) {
        return new AskAssumed(
                assumption(sown(form), form, SOWN),
                assumption(warm(form), form, WARM),
                assumption(out(form), form, OUT),
                assumption(form.text("note").isEmpty() ? SAY.noNote() : SAY.withNote(), form, NOTE));
    }

    /** What a plan was made of. */
    static AskAssumed of(AskPlan plan, FormReader form) {
        AskForm.Ask ask = plan.ask();
        boolean outdoors = plan.asking().underCoverOn() == null;
        return new AskAssumed(
                assumption(
                        sown(ask.method(), ask.container().words(), ask.cellsInATray(), ask.seedsPerCell()),
                        form,
                        SOWN),
                assumption(warm(ask.warm(), ask.underLight()), form, WARM),
                assumption(
                        outdoors
                                ? SAY.assumedOutdoors(
                                        plan.asking().part().words(),
                                        Math.round(100 * plan.asking().risk()))
                                : underCover(plan.asking().underCoverOn()),
                        form,
                        OUT),
                assumption(ask.note().isEmpty() ? SAY.noNote() : SAY.withNote(), form, NOTE));
    }

    private static Assumption assumption(String words, FormReader form, List<String> fields) {
        return new Assumption(words, !Collections.disjoint(form.problems().keySet(), fields));
    }

    private static String sown(FormReader form) {
        String tray = form.text("container");
        String words = tray.equals("own") ? SAY.aTrayOfMyOwn() : trayWords(tray);
        Method method = form.text("method").equals(Method.BAG.word()) ? Method.BAG : Method.CELLS;
        return sown(
                method,
                words,
                number(form, "cellsInATray", AskForm.USUAL_CELLS),
                number(form, "seedsPerCell", advised()));
    }

    private static String trayWords(String word) {
        return Arrays.stream(Container.values())
                .filter(container -> container.word().equals(word))
                .findFirst()
                .orElse(Container.HALF_TRAY)
                .words();
    }

    private static String sown(Method method, String tray, int cells, int perCell) {
        if (method == Method.BAG) {
            return SAY.assumedBag();
        }
        return cells == AskForm.USUAL_CELLS
                ? SAY.assumedCells(tray, perCell)
                : SAY.assumedCellsOf(tray, cells, perCell);
    }

    private static String warm(FormReader form) {
        return warm(!form.text("heat").equals("room"), form.text("after").equals("light"));
    }

    private static String warm(boolean warm, boolean light) {
        if (!warm) {
            return SAY.assumedRoom();
        }
        return light ? SAY.assumedWarmLight() : SAY.assumedWarmHome();
    }

    private static String out(FormReader form) {
        if (form.text("where").equals("cover")) {
            return underCover(null);
        }
        String part = form.text("part");
        String words = Arrays.stream(SeasonPart.values())
                .filter(each -> each.word().equals(part))
                .findFirst()
                .map(each -> " " + each.words())
                .orElse("");
        String risk = form.text("risk");
        return risk.isEmpty()
                ? SAY.assumedOutdoorsAsSet(words)
                : SAY.assumedOutdoorsAt(words, risk.equals("0.1") ? 10 : risk.equals("0.3") ? 30 : 50);
    }

    private static String underCover(@Nullable LocalDate day) {
        return day == null ? SAY.assumedCover() : SAY.assumedCoverOn(DayWords.day(day));
    }

    private static int advised() {
        return SeedsToACell.advised().seeds();
    }

    private static int number(FormReader form, String field, int usual) {
        String text = form.text(field);
        return text.matches("\\d{1,3}") ? Integer.parseInt(text) : usual;
    }
}
