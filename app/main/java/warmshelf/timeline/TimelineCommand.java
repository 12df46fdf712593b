package warmshelf.timeline;

import static warmshelf.timeline.TimelineSentences.SAY;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import warmshelf.BadInput;
import warmshelf.Given;
import warmshelf.Output;
import warmshelf.crop.CelsiusRange;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.HeatNeed;
import warmshelf.crop.Method;
import warmshelf.crop.TemperatureResponse;
import warmshelf.words.Units;

/** {@code timeline}: when to do what for one crop, with the reasons. */
@Command(
        name = "timeline",
        description = "When to sow a crop, and every step until planting out, with the reasons.",
        footerHeading = "%n",
        footer = {
            "A postcode or --last-frost is needed. Prints crop, method, verdict (in time, hurry, tight, too"
                    + " late), frost, harvest, steps (each with step, earliest, ideal, latest and why), sowOutside, warmDays and notes.",
            "frost has lastFrost, the day that is counted from, laterFrostChance, the chance of a frost after it all the"
                    + " same (null where a date alone is given, which tells none), and words that say so.",
            "sowOutside is null for crops that bear moving; else usually (where-it-grows, or pot-that-rots), from, the day"
                    + " from which to sow it outdoors, soilC, how warm the soil should be then (null: not known), why"
                    + " and source.",
            "part is spring, autumn (planted out in summer, ripe by the autumn's frosts) or winter (planted out before"
                    + " them, to stand over winter); parts lists those for which the crop can be sown, each with its"
                    + " verdict and days of sowing. quickest has the days of the quickest kinds, their harvest and"
                    + " whether only they ripen; it is null where the usual kinds ripen surely or no quicker are known."
                    + " again tells every how many days to sow again, and until when; standsUntil is the usual day of a"
                    + " night colder than the crop is known to bear; life and bolting are what is known of its years"
                    + " and of cold that makes it flower early.",
            "harvest has first and half, the days by which the first and half of the harvest are ripe, and"
                    + " chanceFirst and chanceHalf, the chances that they come before a frost that kills the crop; it"
                    + " is null where no source gives days or dates alone are given. In time: the first in 9 of 10"
                    + " years and half in 7; too late: the first in fewer than half of the years; tight: between."
        },
        mixinStandardHelpOptions = true)
public final class TimelineCommand implements Callable<Integer> {
    // Common practice for a mat shared by warm crops; a cool crop gets the nearest temperature that suits it.
    private static final double USUAL_MAT_C = 26;

    private final Clock clock;

    @Option(names = "--crop", required = true, paramLabel = "CROP", description = "A crop's id, such as pepper.")
    private String cropId = "";

    @Option(names = "--season", required = true, paramLabel = "YEAR", description = "The year of planting out.")
    private String season = "";

    @Option(names = "--postcode", paramLabel = "P", description = "Where the plants will stand.")
    private @Nullable String postcode;

    @Option(names = "--country", paramLabel = "C", description = "Of the postcode; usually ${DEFAULT-VALUE}.")
    private String country = "US";

    @Option(
            names = "--last-frost",
            paramLabel = "DATE",
            description = "Last spring frost that counts; a postcode beside it tells its risk.")
    private @Nullable String lastFrost;

    @Option(names = "--first-frost", paramLabel = "DATE", description = "First autumn frost, with --last-frost.")
    private @Nullable String firstFrost;

    @Option(names = "--method", paramLabel = "M", description = "cells or bag; usually ${DEFAULT-VALUE}.")
    private String method = "cells";

    @Option(
            names = "--risk",
            paramLabel = "R",
            description = "Accepted chance of a later frost; usually ${DEFAULT-VALUE}.")
    private String risk = "0.1";

    @Option(
            names = "--mat-c",
            paramLabel = "C",
            description = "The mat's set-point; usually 26, or what suits the crop.")
    private @Nullable String matC;

    @Option(
            names = "--part",
            paramLabel = "PART",
            description = "spring, autumn or winter; usually the first of them that is still in time.")
    private @Nullable String part;

    @Option(names = "--today", paramLabel = "DATE", description = "The day to judge from; today if not given.")
    private @Nullable String today;

    public TimelineCommand() {
        this(Clock.system(ZoneId.systemDefault()));
    }

    TimelineCommand(Clock clock) {
        this.clock = clock;
    }

    @Override
    public Integer call() {
        Crop crop = CropCatalogue.bundled().find(cropId).orElseThrow(() -> UnknownCrop.named(cropId));
        TemperatureResponse response = CropCatalogue.bundled().responseOf(crop);
        Method how = method();
        GivenFrost.Known frost = new GivenFrost(country, postcode, lastFrost, firstFrost)
                .known(Given.whole("--season", season, 2000, 2100), Given.decimal("--risk", risk, 0.01, 0.9));
        FrostDates dates = frost.dates();
        Map<SeasonPart, Timeline> all = new LinkedHashMap<>();
        for (SeasonPart each : dates.parts(crop)) {
            all.put(
                    each,
                    Timeline.plan(new TimelineQuestion(
                            crop,
                            response,
                            how,
                            new PlantingOut.ByFrost(dates, each),
                            true,
                            matC == null ? usualC(crop, response) : Given.decimal("--mat-c", matC, 5, 45),
                            today == null ? LocalDate.now(clock) : Given.date("--today", today),
                            Seen.nothing(),
                            Units.METRIC)));
        }
        Output.json(TimelineAnswer.of(crop, how, frost, chosen(crop, all), all));
        return 0;
    }

    private Method method() {
        try {
            return Method.named(method);
        } catch (IllegalArgumentException unknown) {
            throw new BadInput(SAY.methodUnfit(Given.shown(method)));
        }
    }

    private Timeline chosen(Crop crop, Map<SeasonPart, Timeline> all) {
        String wanted = part;
        if (wanted == null) {
            return NextPart.of(crop, List.copyOf(all.keySet()), each -> Optional.ofNullable(all.get(each)))
                    .orElseThrow();
        }
        return all.entrySet().stream()
                .filter(each -> each.getKey().word().equals(wanted))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow(() -> new BadInput(SAY.partUnfit(
                        Given.shown(wanted),
                        crop.id(),
                        all.keySet().stream().map(SeasonPart::word).collect(Collectors.joining(" or ")))));
    }

    /** Seed that bears no mat lies in a lived-in room. */
    private static double usualC(Crop crop, TemperatureResponse response) {
        CelsiusRange suits = HeatNeed.onMat(crop, response);
        double usual = HeatNeed.of(crop, response) == HeatNeed.NO_MAT ? HeatNeed.ROOM_C : USUAL_MAT_C;
        return Math.max(suits.low(), Math.min(suits.high(), usual));
    }
}
