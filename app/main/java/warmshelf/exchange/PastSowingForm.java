package warmshelf.exchange;

import static warmshelf.exchange.ExchangeSentences.SAY;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.Given;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Method;
import warmshelf.group.Member;
import warmshelf.sowing.Sowing;
import warmshelf.table.TableRow;
import warmshelf.table.WrittenDays;
import warmshelf.words.FormReader;

/** Reads rows of sowings of seasons that are over. */
final class PastSowingForm {
    /** The columns that hold days, from whose cells the order of day and month is told. */
    static final List<String> DAYS = List.of("sown_on", "counted_on", "planted_out_on");

    private static final int OLDEST = 1990;
    private static final int MOST_SEEDS = 10_000;

    private final CropNames crops;
    private final WrittenDays days;
    private final Map<String, Sowing.Grower> growers;
    private final Sowing.@Nullable Grower only;
    private final LocalDate today;
    private final int season;

    /**
     * @param growers by the key of their name
     * @param only whose all rows are; null: as the column says
     * @param season the one that is under way
     */
    PastSowingForm(
            CropCatalogue crops,
            WrittenDays days,
            Map<String, Sowing.Grower> growers,
            Sowing.@Nullable Grower only,
            LocalDate today,
            int season) {
        this.crops = new CropNames(crops);
        this.days = days;
        this.growers = growers;
        this.only = only;
        this.today = today;
        this.season = season;
    }

    /** The sowing of a row; null where it has troubles, which are added. */
    @Nullable
    PastSowing read(TableRow row, List<RowTrouble> troubles) {
        FormReader form = new FormReader(typed(row));
        int of = form.year("season", "season", OLDEST, season - 1);
        String crop = crops.id(row.cell("crop")).orElse("");
        if (crop.isEmpty()) {
            form.refuse("crop", SAY.cropUnknown(Given.shown(row.cell("crop"))));
        }
        String variety = form.requiredText("variety", "variety", 80);
        int seedYear = row.cell("seed_year").isEmpty() ? of : form.year("seed_year", "seed_year", OLDEST - 40, of);
        String method = row.cell("method").isEmpty()
                ? Method.CELLS.word()
                : form.choice("method", "method", List.of(Method.CELLS.word(), Method.BAG.word()));
        int seeds = form.wholeNumber("seeds", "seeds", 1, MOST_SEEDS);
        Integer cameUp =
                form.optionalWholeNumber("came_up", "came_up", 0, seeds).orElse(null);
        Integer lost = form.optionalWholeNumber("lost", "lost", 0, cameUp == null ? seeds : cameUp)
                .orElse(null);
        boolean warm = said(form, "warm", true);
        boolean givenUp = said(form, "given_up", false);
        LocalDate sown = day(form, "sown_on", LocalDate.of(of - 1, 1, 1), LocalDate.of(of + 1, 12, 31));
        LocalDate from = sown == null ? LocalDate.of(of - 1, 1, 1) : sown;
        LocalDate out = row.cell("planted_out_on").isEmpty() ? null : day(form, "planted_out_on", from, today);
        LocalDate counted = row.cell("counted_on").isEmpty() ? out : day(form, "counted_on", from, today);
        String note = form.optionalText("note", "note", 400);
        if (form.ok() && cameUp != null && counted == null) {
            form.refuse("counted_on", SAY.countedOnMissing());
        }
        if (givenUp && out != null) {
            form.refuse("given_up", SAY.givenUpAndOut());
        }
        Sowing.Grower grower = grower(row, form);
        form.problems().forEach((column, sentence) -> troubles.add(new RowTrouble(row.number(), column, sentence)));
        if (!form.ok() || sown == null || grower == null) {
            return null;
        }
        return new PastSowing(
                of,
                grower,
                crop,
                variety,
                seedYear,
                Method.named(method),
                warm,
                sown,
                seeds,
                cameUp,
                cameUp == null && lost == null ? null : counted,
                lost,
                out,
                givenUp,
                note);
    }

    private static Map<String, List<String>> typed(TableRow row) {
        Map<String, List<String>> typed = new HashMap<>();
        row.cells().forEach((column, cell) -> typed.put(column, List.of(cell)));
        return typed;
    }

    private static boolean said(FormReader form, String column, boolean otherwise) {
        String cell = form.text(column);
        Optional<Boolean> said = cell.isEmpty() ? Optional.of(otherwise) : YesOrNo.read(cell);
        if (said.isEmpty()) {
            form.refuse(column, SAY.yesOrNo(column, Given.shown(cell)));
        }
        return said.orElse(otherwise);
    }

    private @Nullable LocalDate day(FormReader form, String column, LocalDate first, LocalDate latest) {
        String cell = form.text(column);
        LocalDate last = latest.isAfter(today) ? today : latest;
        if (days.isAmbiguous(cell)) {
            form.refuse(column, SAY.dateAmbiguous(column, Given.shown(cell)));
            return null;
        }
        LocalDate day = days.read(cell).orElse(null);
        if (day == null || day.isBefore(first) || day.isAfter(last)) {
            form.refuse(column, SAY.dateUnfit(column, Given.shown(cell), first.toString(), last.toString()));
            return null;
        }
        return day;
    }

    private Sowing.@Nullable Grower grower(TableRow row, FormReader form) {
        if (only != null) {
            return only;
        }
        Sowing.Grower named = growers.get(Member.key(row.cell("grower")));
        if (named == null) {
            form.refuse("grower", SAY.growerUnknown(Given.shown(row.cell("grower"))));
        }
        return named;
    }
}
