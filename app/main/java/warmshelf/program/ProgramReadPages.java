package warmshelf.program;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import warmshelf.check.Round;
import warmshelf.check.RoundLines;
import warmshelf.check.RoundStore;
import warmshelf.frost.garden.Thermometer;
import warmshelf.frost.garden.ThermometerStore;
import warmshelf.web.Pages;
import warmshelf.web.Role;

/** What scripts read. */
final class ProgramReadPages implements Pages {
    /** Under which all routes for scripts stand; what changes so that scripts break gets a prefix of its own. */
    static final String PREFIX = "/api/v1";

    private final ProgramDoorPages door;
    private final RoundStore rounds;
    private final ProgramRowsStore rows;
    private final ProgramMatStore mats;
    private final ThermometerStore thermometers;
    private final WatchedFigures figures;

    ProgramReadPages(
            ProgramDoorPages door,
            RoundStore rounds,
            ProgramRowsStore rows,
            ProgramMatStore mats,
            ThermometerStore thermometers,
            WatchedFigures figures) {
        this.door = door;
        this.figures = figures;
        this.rounds = rounds;
        this.rows = rows;
        this.mats = mats;
        this.thermometers = thermometers;
    }

    @Override
    public void register(RoutesConfig routes) {
        // Anyone: it is part of the program and tells nothing of the group.
        routes.get(PREFIX + "/openapi.json", ProgramReadPages::describe, Role.ANYONE);
        routes.get(PREFIX + "/token", door.reading(null, ProgramReadPages::token), Role.PROGRAM);
        routes.get(PREFIX + "/metrics", door.figures(figures), Role.PROGRAM);
        routes.get(PREFIX + "/round", door.reading(TokenScope.ROUND, this::round), Role.PROGRAM);
        routes.get(PREFIX + "/mats", door.reading(TokenScope.READINGS, this::mats), Role.PROGRAM);
        routes.get(PREFIX + "/thermometers", door.reading(TokenScope.NIGHTS, this::thermometers), Role.PROGRAM);
        routes.get(PREFIX + "/sowings", door.reading(TokenScope.SOWINGS, this::sowings), Role.PROGRAM);
        routes.get(PREFIX + "/stays", door.reading(TokenScope.STAYS, this::stays), Role.PROGRAM);
        routes.get(PREFIX + "/lots", door.reading(TokenScope.LOTS, this::lots), Role.PROGRAM);
    }

    private static void describe(Context ctx) {
        try (InputStream document = ProgramReadPages.class.getResourceAsStream("/templates/program/openapi.json")) {
            byte[] bytes = Objects.requireNonNull(document, "openapi.json").readAllBytes();
            ctx.contentType("application/json").result(new String(bytes, StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** What a token is and lets its script do. */
    private record TokenAnswer(
            String name,
            List<String> scopes,
            boolean coordinator,
            String group,
            String timeZone,
            LocalDate today,
            int season) {}

    private static Object token(Context ctx, ProgramCaller caller) {
        door(new ProgramQuery(ctx.queryParamMap(), Set.of(), false));
        return new TokenAnswer(
                caller.tokenName(),
                caller.scopes().stream().map(TokenScope::word).toList(),
                caller.coordinator(),
                caller.group(),
                caller.zone().getId(),
                caller.today(),
                caller.season());
    }

    private Object round(Context ctx, ProgramCaller caller) {
        ProgramQuery query = new ProgramQuery(ctx.queryParamMap(), Set.of("show"), false);
        boolean all = query.all();
        door(query);
        Round round = all ? rounds.whole(caller.today()) : rounds.of(caller.memberId(), caller.today());
        Map<String, @Nullable Object> answer = new LinkedHashMap<>();
        answer.put("date", caller.today());
        answer.put("checks", RoundLines.of(round, caller.today()));
        return answer;
    }

    private Object mats(Context ctx, ProgramCaller caller) {
        ProgramQuery query = new ProgramQuery(ctx.queryParamMap(), Set.of(), true);
        return page(ctx, query, part -> mats.mats(caller.today(), part), ProgramMatStore.MatRow::id);
    }

    /** @param own whether it hangs in one's own garden; the others are the group's, or for coordinators other members' */
    private record ThermometerRow(UUID id, String name, boolean own) {}

    private Object thermometers(Context ctx, ProgramCaller caller) {
        ProgramQuery query = new ProgramQuery(ctx.queryParamMap(), Set.of(), true);
        List<Thermometer> all = thermometers.readableBy(caller.memberId(), caller.coordinator());
        return page(
                ctx,
                query,
                part -> all.stream()
                        .sorted(Comparator.comparing(each -> each.id().toString()))
                        .filter(each -> part.after() == null
                                || each.id().toString().compareTo(part.after().toString()) > 0)
                        .limit(part.limit())
                        .map(each -> new ThermometerRow(
                                each.id(), each.name(), caller.memberId().equals(each.memberId())))
                        .toList(),
                ThermometerRow::id);
    }

    private Object sowings(Context ctx, ProgramCaller caller) {
        ProgramQuery query = new ProgramQuery(ctx.queryParamMap(), Set.of("season"), true);
        @Nullable Integer season = query.season();
        return page(ctx, query, part -> rows.sowings(caller.taker(), season, part), ProgramRowsStore.SowingRow::id);
    }

    private Object stays(Context ctx, ProgramCaller caller) {
        ProgramQuery query = new ProgramQuery(ctx.queryParamMap(), Set.of("from", "to"), true);
        @Nullable LocalDate from = query.day("from");
        @Nullable LocalDate to = query.day("to");
        return page(ctx, query, part -> rows.stays(caller.taker(), from, to, part), ProgramRowsStore.StayRow::id);
    }

    private Object lots(Context ctx, ProgramCaller caller) {
        ProgramQuery query = new ProgramQuery(ctx.queryParamMap(), Set.of(), true);
        return page(ctx, query, part -> rows.lots(caller.taker(), part), ProgramRowsStore.LotRow::id);
    }

    private static void door(ProgramQuery query) {
        ProgramDoorPages.refuseUnfit(query.problems());
    }

    /** @param next the address of the rows after these; null: there are none */
    private record PageOf(List<?> items, @Nullable String next) {}

    private static <R> PageOf page(
            Context ctx, ProgramQuery query, Function<ProgramRowsStore.Part, List<R>> read, Function<R, UUID> id) {
        @Nullable UUID after = query.after();
        int limit = query.limit();
        door(query);
        // one more tells whether there are more
        List<R> found = read.apply(new ProgramRowsStore.Part(after, limit + 1));
        if (found.size() <= limit) {
            return new PageOf(found, null);
        }
        List<R> items = found.subList(0, limit);
        return new PageOf(items, query.next(ctx.path(), id.apply(items.get(limit - 1))));
    }
}
