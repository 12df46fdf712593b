package warmshelf.frost.garden;

import static warmshelf.frost.garden.GardenSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.DayWords;
import warmshelf.words.Degrees;
import warmshelf.words.FormReader;

/** One thermometer's nights: noting last night's on a phone, changing and taking away, many at once. */
final class NightPages implements Pages {
    private static final String PAGE = "frost/thermometer.peb";
    private static final String MANY = "frost/nights.peb";
    private static final LocalDate FIRST_DAY = LocalDate.of(1900, 1, 1);

    private final ThermometerStore thermometers;
    private final NightStore nights;

    NightPages(ThermometerStore thermometers, NightStore nights) {
        this.thermometers = thermometers;
        this.nights = nights;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/frost/thermometers/{id}", this::show, Role.MEMBER);
        routes.post("/frost/thermometers/{id}/nights", this::note, Role.MEMBER);
        routes.post("/frost/thermometers/{id}/removed-nights", this::remove, Role.MEMBER);
        routes.get("/frost/thermometers/{id}/nights", this::blankMany, Role.MEMBER);
        routes.post("/frost/thermometers/{id}/many-nights", this::noteMany, Role.MEMBER);
    }

    private void show(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Thermometer thermometer = seen(ctx);
        LocalDate day = dayAsked(ctx, visitor.today());
        Night noted = noted(thermometer.id(), day);
        Respond.page(ctx, PAGE, page(visitor, thermometer, noted, NightForm.showing(day, noted, visitor.units())));
    }

    private void note(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Thermometer thermometer = changeable(ctx);
        NightForm form = NightForm.of(ctx.formParamMap(), visitor.today(), visitor.units());
        LocalDate day = form.day();
        form.askBack(DoubtfulNight.why(day, form.celsius(), around(thermometer.id(), day, day))
                .map(why -> why.words(visitor.units())));
        if (!form.ok()) {
            Respond.again(ctx, PAGE, page(visitor, thermometer, null, form));
            return;
        }
        Optional<Double> before = nights.note(thermometer.id(), day, form.celsius(), visitor.memberId());
        String degrees = Degrees.words(form.celsius(), visitor.units());
        String meaning = NightWords.of(form.celsius());
        String noted = DayWords.day(day);
        Respond.seeOther(
                ctx,
                address(thermometer),
                before.map(old -> SAY.notedOver(degrees, meaning, noted, Degrees.words(old, visitor.units())))
                        .orElseGet(() -> SAY.noted(degrees, meaning, noted)));
    }

    private void remove(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Thermometer thermometer = changeable(ctx);
        FormReader form = new FormReader(ctx.formParamMap());
        LocalDate day = form.date("day", SAY.theMorning());
        if (!form.ok()) {
            throw Refusal.notFound(SAY.noSuchNight());
        }
        double old = nights.forget(thermometer.id(), day, visitor.memberId())
                .orElseThrow(() -> Refusal.notFound(SAY.notNoted(day.toString())));
        Respond.seeOther(
                ctx, address(thermometer), SAY.takenAway(DayWords.day(day), Degrees.words(old, visitor.units())));
    }

    private void blankMany(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Respond.page(
                ctx,
                MANY,
                ManyPage.of(visitor, changeable(ctx), ManyNightsForm.blank(visitor.today(), visitor.units())));
    }

    private void noteMany(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Thermometer thermometer = changeable(ctx);
        ManyNightsForm form = ManyNightsForm.of(ctx.formParamMap(), visitor.today(), visitor.units());
        SortedMap<LocalDate, Double> given = form.nights();
        if (form.ok()) {
            form.askBack(around(thermometer.id(), given.firstKey(), given.lastKey()));
        }
        if (!form.ok()) {
            Respond.again(ctx, MANY, ManyPage.of(visitor, thermometer, form));
            return;
        }
        int over = nights.noteAll(thermometer.id(), given, visitor.memberId());
        Respond.seeOther(
                ctx,
                address(thermometer),
                over == 0 ? SAY.manyNoted(given.size()) : SAY.manyNotedOver(given.size(), over));
    }

    /** One thermometer, and the form for a night. */
    private record OnePage(ThermometerPage page, NightForm form) {}

    private OnePage page(Visitor visitor, Thermometer thermometer, @Nullable Night noted, NightForm form) {
        LocalDate today = visitor.today();
        List<Night> shown = nights.nights(thermometer.id(), today.minusDays(ThermometerPage.NIGHTS_SHOWN - 1), today);
        return new OnePage(
                ThermometerPage.of(thermometer, shown, noted, thermometers.recordOf(thermometer), visitor), form);
    }

    /**
     * The form for many nights.
     *
     * @param example a line as it can be typed
     * @param most how many lines are taken at once
     */
    private record ManyPage(Thermometer thermometer, ManyNightsForm form, String example, int most) {
        static ManyPage of(Visitor visitor, Thermometer thermometer, ManyNightsForm form) {
            return new ManyPage(
                    thermometer,
                    form,
                    "%s,%s".formatted(visitor.today(), Degrees.typed(-2.5, visitor.units())),
                    ManyNightsForm.MOST_LINES);
        }
    }

    private List<Night> around(UUID thermometer, LocalDate first, LocalDate last) {
        return nights.nights(
                thermometer, first.minusDays(DoubtfulNight.DAYS_AROUND), last.plusDays(DoubtfulNight.DAYS_AROUND));
    }

    private @Nullable Night noted(UUID thermometer, LocalDate day) {
        return nights.nights(thermometer, day, day).stream().findFirst().orElse(null);
    }

    /** The day named in the address; one that cannot be shows today. */
    private static LocalDate dayAsked(Context ctx, LocalDate today) {
        String text = ctx.queryParam("day");
        try {
            LocalDate day = text == null ? today : LocalDate.parse(text);
            return day.isAfter(today) || day.isBefore(FIRST_DAY) ? today : day;
        } catch (DateTimeParseException notADay) {
            return today;
        }
    }

    private Thermometer seen(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        return thermometers
                .find(Respond.id(ctx, "id"))
                .filter(each -> each.mayBeSeenBy(visitor.memberId(), visitor.coordinator()))
                .orElseThrow(Refusal::notFound);
    }

    private Thermometer changeable(Context ctx) {
        Thermometer thermometer = seen(ctx);
        if (thermometer.retired()) {
            throw Refusal.conflict(SAY.nightsStay(thermometer.name()));
        }
        return thermometer;
    }

    private static String address(Thermometer thermometer) {
        return "/frost/thermometers/" + thermometer.id();
    }
}
