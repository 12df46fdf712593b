package warmshelf.exchange;

import static warmshelf.exchange.ExchangeSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.Given;
import warmshelf.frost.garden.DoubtfulNight;
import warmshelf.frost.garden.Night;
import warmshelf.frost.garden.NightForm;
import warmshelf.frost.garden.NightStore;
import warmshelf.table.TableHeading;
import warmshelf.table.TableRow;
import warmshelf.table.WrittenDays;
import warmshelf.words.Degrees;
import warmshelf.words.LengthUnit;
import warmshelf.words.Numbers;
import warmshelf.words.TemperatureUnit;
import warmshelf.words.Units;

/** Notes what a thermometer showed. */
final class IncomingNightStore implements IncomingRows {
    private static final LocalDate FIRST_DAY = LocalDate.of(1900, 1, 1);
    private static final int MOST_DOUBTS = 30;

    private final DSLContext within;
    private final NightStore nights;
    private final IncomingOrder order;
    private final IncomingOrder.NightsOf thermometer;
    private final boolean keep;
    private final WrittenDays days = new WrittenDays();
    private final NavigableMap<LocalDate, Night> noted = new TreeMap<>();
    private final NavigableMap<LocalDate, Double> given = new TreeMap<>();
    private final SortedMap<LocalDate, Double> fresh = new TreeMap<>();

    IncomingNightStore(
            DSLContext within,
            NightStore nights,
            IncomingOrder order,
            IncomingOrder.NightsOf thermometer,
            boolean keep) {
        this.within = within;
        this.nights = nights;
        this.order = order;
        this.thermometer = thermometer;
        this.keep = keep;
        nights.nights(thermometer.id(), FIRST_DAY, order.today()).forEach(night -> noted.put(night.day(), night));
    }

    @Override
    public boolean learns() {
        return true;
    }

    @Override
    public void learn(TableRow row) {
        days.learn(day(row));
    }

    private static String day(TableRow row) {
        return row.cell("day").isEmpty() ? row.cell("date") : row.cell("day");
    }

    @Override
    public RowJudgement judge(TableRow row) {
        String named = row.cell("thermometer");
        if (!named.isEmpty() && !named.equalsIgnoreCase(thermometer.name())) {
            return new RowJudgement.LeftOut(SAY.otherThermometer(Given.shown(named)));
        }
        String text = day(row);
        if (days.isAmbiguous(text)) {
            return wrong(row, "day", SAY.dayAmbiguous(Given.shown(text)));
        }
        boolean inCelsius = row.cell("fahrenheit").isEmpty();
        String column = inCelsius ? "celsius" : "fahrenheit";
        NightForm form = NightForm.of(
                Map.of(
                        "day", List.of(days.read(text).map(LocalDate::toString).orElse(text)),
                        "temperature", List.of(row.cell(column))),
                order.today(),
                new Units(inCelsius ? TemperatureUnit.CELSIUS : TemperatureUnit.FAHRENHEIT, LengthUnit.CENTIMETRES));
        if (!form.ok()) {
            return new RowJudgement.Wrong(form.problems().entrySet().stream()
                    .map(each ->
                            new RowTrouble(row.number(), each.getKey().equals("day") ? "day" : column, each.getValue()))
                    .toList());
        }
        return judge(row, form.day(), Numbers.tenths(form.celsius()));
    }

    private RowJudgement judge(TableRow row, LocalDate day, double celsius) {
        @Nullable Double before = given.putIfAbsent(day, celsius);
        if (before != null) {
            return before == celsius
                    ? new RowJudgement.LeftOut(SAY.dayTwiceAlike(day))
                    : wrong(row, "day", SAY.dayTwice(day));
        }
        @Nullable Night there = noted.get(day);
        if (there != null && there.celsius() == celsius) {
            return new RowJudgement.LeftOut(SAY.nightThere());
        }
        fresh.put(day, celsius);
        String degrees = Degrees.words(celsius, order.units());
        return new RowJudgement.Good(
                there == null
                        ? SAY.night(day, degrees)
                        : SAY.nightInstead(day, degrees, Degrees.words(there.celsius(), order.units())));
    }

    private static RowJudgement wrong(TableRow row, String column, String sentence) {
        return new RowJudgement.Wrong(List.of(new RowTrouble(row.number(), column, sentence)));
    }

    @Override
    public void finish() {
        if (keep && !fresh.isEmpty()) {
            nights.noteAll(within, thermometer.id(), fresh, order.by());
        }
    }

    @Override
    public List<String> doubts() {
        NavigableMap<LocalDate, Night> all = new TreeMap<>(noted);
        given.forEach((day, celsius) -> all.put(day, new Night(day, celsius, "")));
        List<String> doubts = new ArrayList<>();
        for (Map.Entry<LocalDate, Double> each : fresh.entrySet()) {
            LocalDate day = each.getKey();
            List<Night> around = List.copyOf(all.subMap(
                            day.minusDays(DoubtfulNight.DAYS_AROUND),
                            true,
                            day.plusDays(DoubtfulNight.DAYS_AROUND),
                            true)
                    .values());
            DoubtfulNight.why(day, each.getValue(), around)
                    .ifPresent(why -> doubts.add(SAY.doubt(day, why.words(order.units()))));
            if (doubts.size() == MOST_DOUBTS) {
                doubts.add(SAY.moreDoubts());
                return doubts;
            }
        }
        return doubts;
    }

    @Override
    public List<String> remarks(TableHeading heading) {
        List<String> remarks = new ArrayList<>();
        days.monthFirst().ifPresent(example -> remarks.add(SAY.monthFirst(example)));
        days.dayFirst().ifPresent(example -> remarks.add(SAY.dayFirst(example)));
        return remarks;
    }
}
