package warmshelf.placing;

import static warmshelf.placing.PlacingSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import warmshelf.allocation.CandidatePlace;
import warmshelf.allocation.Obstacle;
import warmshelf.allocation.SpaceJudge;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.Surroundings;
import warmshelf.finding.trial.TrialWarmthStore;
import warmshelf.finding.trial.TrialWarnings;
import warmshelf.sowing.History;
import warmshelf.sowing.HistoryStore;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** What would come of laying a waiting request on a place: told to the board's script, which saves by the request's own form. */
final class PlacementLookPages implements Pages {
    private final HistoryStore histories;
    private final RequestWishes wishes;
    private final LyingStore lying;
    private final TrialWarmthStore trials;
    private final PlacementView places;

    PlacementLookPages(
            HistoryStore histories,
            RequestWishes wishes,
            LyingStore lying,
            TrialWarmthStore trials,
            PlacementView places) {
        this.places = places;
        this.histories = histories;
        this.wishes = wishes;
        this.lying = lying;
        this.trials = trials;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/requests/{id}/move", this::look, Role.SITE_COORDINATOR);
    }

    private void look(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        History history = histories.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        SpaceRequest request = history.request();
        if (request == null || !request.isWaiting()) {
            throw Refusal.conflict(SAY.decidedByOthers());
        }
        Map<String, String> fields = fields(ctx, request, visitor.today());
        PlacementForm form = form(fields, request, visitor);
        PlacementForm.Placement placement = form.placement(wishes.daysAt(history, request, visitor.today()))
                .orElseThrow(() -> unusable(form.reader()));
        ctx.json(answer(history, request, placement, fields, visitor.units()));
    }

    private PlacementForm form(Map<String, String> fields, SpaceRequest request, Visitor visitor) {
        Map<String, List<String>> typed = new HashMap<>();
        fields.forEach((name, value) -> typed.put(name, List.of(value)));
        return places.form(typed, request, visitor);
    }

    private static Refusal unusable(FormReader reader) {
        return Refusal.of(
                HttpStatus.UNPROCESSABLE_CONTENT,
                String.join(" ", reader.problems().values()));
    }

    /** The place that was aimed at, and the board's day where the request can begin then, else its ideal day. */
    private static Map<String, String> fields(Context ctx, SpaceRequest request, LocalDate today) {
        String spot = Objects.requireNonNullElse(ctx.queryParam("spot"), "");
        int slash = Math.max(0, spot.lastIndexOf('/'));
        FormReader asked = new FormReader(ctx.queryParamMap());
        LocalDate day = asked.text("day").isEmpty() ? request.ideal() : asked.date("day", SAY.firstDayField());
        if (!asked.ok()) {
            throw unusable(asked);
        }
        Map<String, String> fields = new HashMap<>();
        fields.put("place", spot.substring(0, slash));
        fields.put("quarter", spot.substring(Math.min(spot.length(), slash + 1)));
        fields.put("from", request.startNear(day, today).toString());
        return fields;
    }

    private Map<String, Object> answer(
            History history,
            SpaceRequest request,
            PlacementForm.Placement placement,
            Map<String, String> fields,
            Units units) {
        CandidatePlace place = lying.places().stream()
                .filter(each -> each.id().equals(placement.spot().placeId()))
                .findFirst()
                .orElseThrow(Refusal::notFound);
        Surroundings around = lying.around(
                Set.<UUID>of(),
                List.of(place),
                placement.spot().from(),
                placement.spot().to());
        List<Obstacle> obstacles = new SpaceJudge(around)
                .onMat(
                        place,
                        placement.mat(),
                        placement.spot(),
                        placement.warm(),
                        request.band(),
                        request.needsLight());
        TrialWarnings warnings = trials.warnings(history.sowing(), placement.warm());
        fields.put("warned", warnings.key());
        String then = MoveAnswer.words(
                place.whereWith(placement.spot().slot()),
                placement.spot().from(),
                placement.spot().to(),
                placement.warm(),
                units);
        return Map.of(
                "fits",
                obstacles.isEmpty(),
                "same",
                false,
                "then",
                then,
                "clashes",
                obstacles.stream().map(each -> each.words(units)).toList(),
                "warnings",
                warnings.words(units),
                "fields",
                fields);
    }
}
