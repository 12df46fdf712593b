package warmshelf.demo;

import static warmshelf.demo.DemoDecisions.done;

import java.time.LocalDate;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import org.apache.commons.csv.CSVRecord;
import warmshelf.frost.garden.FrostCorrection.Area;
import warmshelf.frost.garden.FrostCorrection.Change;
import warmshelf.frost.garden.GardenPoint;
import warmshelf.frost.garden.NewThermometer;

/** What the demo's members know of frost themselves. */
final class DemoFrost {
    private static final long STARTING_NUMBER = 46;
    private static final int YEARS_READ = 2;
    private static final double YEAR_DAYS = 365.25;
    private static final double COLDEST_DAY = 22;
    private static final double MEAN_C = 0.5;
    private static final double SWING_C = 14.5;
    private static final double STRAY_C = 3.2;
    private static final double HANDED_ON = 0.65;

    private final DemoHouse house;
    private final Map<String, UUID> members;
    private final LocalDate today;

    DemoFrost(DemoHouse house, Map<String, UUID> members, LocalDate today) {
        this.house = house;
        this.members = members;
        this.today = today;
    }

    void tell() {
        DemoTable.rows("frost.csv").forEach(this::tell);
    }

    private void tell(CSVRecord row) {
        UUID who = DemoTable.known(members, row.get("who"));
        switch (row.get("what")) {
            case "point" -> done(house.gardens().setPoint(who, point(row), 0, who));
            case "area" -> correct(row, new Area.Postcodes("US", row.get("postcode_start")), who);
            case "garden" -> correct(row, new Area.Garden(who), who);
            default -> hang(row, who);
        }
    }

    private static GardenPoint point(CSVRecord row) {
        return new GardenPoint(
                Double.parseDouble(row.get("latitude")),
                Double.parseDouble(row.get("longitude")),
                Double.parseDouble(row.get("elevation_m")));
    }

    private void correct(CSVRecord row, Area area, UUID who) {
        Change change = new Change.Shift(DemoTable.number(row, "spring_days"), DemoTable.number(row, "autumn_days"));
        house.corrections().correct(area, change, row.get("reason"), who);
    }

    private void hang(CSVRecord row, UUID who) {
        UUID thermometer = house.thermometers().add(new NewThermometer(row.get("reason"), who, point(row)), who);
        house.nights().noteAll(thermometer, nights(), who);
    }

    /** Invented nights: a yearly wave, and strays that last a few nights. */
    private SortedMap<LocalDate, Double> nights() {
        Random random = new Random(STARTING_NUMBER);
        SortedMap<LocalDate, Double> nights = new TreeMap<>();
        double stray = 0;
        for (LocalDate day = today.minusYears(YEARS_READ); day.isBefore(today); day = day.plusDays(1)) {
            stray = HANDED_ON * stray + Math.sqrt(1 - HANDED_ON * HANDED_ON) * STRAY_C * random.nextGaussian();
            double wave = Math.cos(2 * Math.PI * (day.getDayOfYear() - COLDEST_DAY) / YEAR_DAYS);
            nights.put(day, Math.round(10 * (MEAN_C - SWING_C * wave + stray)) / 10.0);
        }
        return nights;
    }
}
