package warmshelf.check;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;

/** The rota: who looks on which day at which site. Everyone reads it, coordinators write it. */
public final class DutyPages implements Pages {
    private static final int DAYS_SHOWN = 14;

    private final DutyStore duties;

    DutyPages(DutyStore duties) {
        this.duties = duties;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/duty", this::show, Role.MEMBER);
        routes.post("/duty", this::write, Role.COORDINATOR);
    }

    /** One day of the rota, with one cell for each site. */
    public record Day(LocalDate day, List<Cell> cells) {}

    /** Who looks at a site on a day; an empty member when nobody does. */
    public record Cell(String field, String site, String memberId, String member) {}

    private void show(Context ctx) {
        LocalDate from = from(ctx);
        Map<UUID, Map<LocalDate, DutyStore.Named>> rota = duties.rota(from, from.plusDays(DAYS_SHOWN));
        List<DutyStore.Named> sites = duties.sites();
        List<Day> days = new ArrayList<>();
        from.datesUntil(from.plusDays(DAYS_SHOWN))
                .forEach(day -> days.add(new Day(
                        day, sites.stream().map(site -> cell(site, day, rota)).toList())));
        Map<String, Object> model = new HashMap<>();
        model.put("days", days);
        model.put("sites", sites);
        model.put("members", duties.members());
        model.put("from", from);
        model.put("before", from.minusDays(DAYS_SHOWN));
        model.put("after", from.plusDays(DAYS_SHOWN));
        ctx.render("check/duty.peb", model);
    }

    private static Cell cell(DutyStore.Named site, LocalDate day, Map<UUID, Map<LocalDate, DutyStore.Named>> rota) {
        DutyStore.Named member = rota.getOrDefault(site.id(), Map.of()).get(day);
        String field = "duty/" + site.id() + "/" + day;
        return member == null
                ? new Cell(field, site.name(), "", "")
                : new Cell(field, site.name(), member.id().toString(), member.name());
    }

    private static LocalDate from(Context ctx) {
        LocalDate today = Visitor.of(ctx).today();
        String asked = ctx.queryParam("from");
        if (asked == null) {
            return today;
        }
        try {
            LocalDate from = LocalDate.parse(asked);
            if (Math.abs(from.toEpochDay() - today.toEpochDay()) <= 800) {
                return from;
            }
        } catch (DateTimeParseException notADate) {
            // the sentence below names it
        }
        throw Refusal.of(
                HttpStatus.BAD_REQUEST,
                "The first day was '%s'; a date such as %s is accepted, within two years of today."
                        .formatted(asked.length() > 40 ? "…" : asked, today));
    }

    private void write(Context ctx) {
        Set<UUID> sites = ids(duties.sites());
        Set<UUID> members = ids(duties.members());
        List<DutyStore.Change> changes = new ArrayList<>();
        ctx.formParamMap().forEach((field, values) -> {
            if (field.startsWith("duty/")) {
                changes.add(change(field, values.get(0), sites, members));
            }
        });
        int written = duties.write(changes, Visitor.of(ctx).memberId());
        Respond.seeOther(ctx, "/duty", written == 0 ? "Nothing had changed." : "The rota is kept.");
    }

    private static Set<UUID> ids(List<DutyStore.Named> named) {
        return named.stream().map(DutyStore.Named::id).collect(Collectors.toSet());
    }

    private static DutyStore.Change change(String field, String value, Set<UUID> sites, Set<UUID> members) {
        try {
            String[] parts = field.split("/", -1);
            UUID site = UUID.fromString(parts[1]);
            LocalDate day = LocalDate.parse(parts[2]);
            @Nullable UUID member = value.isBlank() ? null : UUID.fromString(value);
            if (parts.length == 3 && sites.contains(site) && (member == null || members.contains(member))) {
                return new DutyStore.Change(site, day, member);
            }
        } catch (IllegalArgumentException | DateTimeParseException | ArrayIndexOutOfBoundsException malformed) {
            // the sentence below covers it
        }
        throw Refusal.of(
                HttpStatus.UNPROCESSABLE_CONTENT,
                "One line of the rota names a site or a person that is not in the group any more. Open the page again.");
    }
}
