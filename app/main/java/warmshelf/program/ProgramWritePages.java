package warmshelf.program;

import static warmshelf.program.ProgramSentences.SAY;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.UUID;
import warmshelf.check.SentAnswer;
import warmshelf.check.SentEntries;
import warmshelf.frost.garden.DoubtfulNight;
import warmshelf.frost.garden.Night;
import warmshelf.frost.garden.NightStore;
import warmshelf.frost.garden.Thermometer;
import warmshelf.frost.garden.ThermometerStore;
import warmshelf.tablet.TickReach;
import warmshelf.web.Pages;
import warmshelf.web.PretendedClock;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.words.Units;

/** What scripts send: what a mat's sensor shows, a garden thermometer's nights, ticks of the round. */
final class ProgramWritePages implements Pages {
    private static final Set<String> OF_AN_ENTRY = Set.of(
            "id",
            "sowing",
            "mat",
            "seenAt",
            "pageAt",
            "step",
            "sprouted",
            "moved",
            "lost",
            "finished",
            "problem",
            "note",
            "lightPlace",
            "supersedes",
            "celsius");

    private final ProgramDoorPages door;
    private final SentEntries entries;
    private final NightStore nights;
    private final ThermometerStore thermometers;
    private final Clock clock;

    ProgramWritePages(
            ProgramDoorPages door, SentEntries entries, NightStore nights, ThermometerStore thermometers, Clock clock) {
        this.door = door;
        this.entries = entries;
        this.nights = nights;
        this.thermometers = thermometers;
        this.clock = clock;
    }

    @Override
    public void register(RoutesConfig routes) {
        String prefix = ProgramReadPages.PREFIX;
        routes.post(prefix + "/mats/{id}/readings", door.writing(TokenScope.READINGS, this::reading), Role.PROGRAM);
        routes.post(prefix + "/thermometers/{id}/nights", door.writing(TokenScope.NIGHTS, this::nights), Role.PROGRAM);
        routes.post(prefix + "/round/entries", door.writing(TokenScope.TICKS, this::ticks), Role.PROGRAM);
    }

    /** @param remark what else to know; empty where there is nothing */
    private record ReadingAnswer(UUID id, UUID mat, String matName, String remark) {}

    private Object reading(Context ctx, ProgramCaller caller) {
        UUID mat = Respond.id(ctx, "id");
        String name = entries.matName(mat).orElseThrow(() -> Refusal.notFound(SAY.noSuchMat()));
        SentFields body = body(ctx).only(Set.of("celsius", "seenAt"));
        String celsius = body.number("celsius");
        String seenAt = body.text("seenAt");
        if (celsius.isEmpty() && body.ok()) {
            body.refuse("celsius", SAY.celsiusMissing());
        }
        ProgramDoorPages.refuseUnfit(body.problems());
        UUID id = idOf(ctx, caller);
        ObjectNode entry = JsonNodeFactory.instance.objectNode();
        entry.put("id", id.toString());
        entry.put("mat", mat.toString());
        entry.put("celsius", celsius);
        entry.put("seenAt", seenAt.isEmpty() ? realNow().toString() : seenAt);
        SentAnswer answer =
                entries.take(List.of(entry), realNow(), sender(caller)).get(0);
        if (answer.wasRefused()) {
            throw Refusal.of(HttpStatus.UNPROCESSABLE_CONTENT, answer.sentence());
        }
        return new ReadingAnswer(id, mat, name, answer.sentence());
    }

    /** The same sending has the same id, also where its answer is forgotten. */
    private static UUID idOf(Context ctx, ProgramCaller caller) {
        String sending = caller.tokenId() + "\n" + ctx.path() + "\n" + ProgramDoorPages.key(ctx);
        return UUID.nameUUIDFromBytes(sending.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * @param noted how many nights were sent
     * @param changed how many of them had been noted with another figure
     */
    private record NightsAnswer(UUID thermometer, int noted, int changed) {}

    private Object nights(Context ctx, ProgramCaller caller) {
        Thermometer thermometer = thermometers
                .find(Respond.id(ctx, "id"))
                .filter(each -> each.mayBeSeenBy(caller.memberId(), caller.coordinator()))
                .orElseThrow(() -> Refusal.notFound(SAY.noSuchThermometer()));
        if (thermometer.retired()) {
            throw Refusal.conflict(SAY.thermometerRetired(thermometer.name()));
        }
        SentNights sent = new SentNights(body(ctx), caller.today());
        ProgramDoorPages.refuseUnfit(sent.problems());
        List<Night> noted = nights.nights(
                thermometer.id(),
                sent.celsius().firstKey().minusDays(DoubtfulNight.DAYS_AROUND),
                sent.celsius().lastKey().plusDays(DoubtfulNight.DAYS_AROUND));
        sent.askBack(noted);
        ProgramDoorPages.refuseUnfit(sent.problems());
        SortedMap<LocalDate, Double> fresh = sent.without(noted);
        int changed = fresh.isEmpty() ? 0 : nights.noteAll(thermometer.id(), fresh, caller.memberId());
        return new NightsAnswer(thermometer.id(), sent.celsius().size(), changed);
    }

    /** What became of each entry, in the order in which they were sent. */
    private record TicksAnswer(List<SentAnswer> entries) {}

    private Object ticks(Context ctx, ProgramCaller caller) {
        SentFields body = body(ctx).only(Set.of("sentAt", "entries"));
        Optional<Instant> sentAt = SentEntries.moment(body.text("sentAt"));
        if (sentAt.isEmpty()) {
            body.refuse("sentAt", SAY.sentAtUnfit());
        }
        List<JsonNode> sent = body.objects("entries", SentEntries.MOST).stream()
                .map(entry -> entry.only(OF_AN_ENTRY).node())
                .toList();
        ProgramDoorPages.refuseUnfit(body.problems());
        return new TicksAnswer(entries.take(sent, sentAt.orElseThrow(), sender(caller)));
    }

    private static SentFields body(Context ctx) {
        return SentFields.of(ctx.body()).orElseThrow(() -> Refusal.of(HttpStatus.BAD_REQUEST, SAY.notAnObject()));
    }

    private SentEntries.Sender sender(ProgramCaller caller) {
        return new SentEntries.Sender(
                caller.memberId(),
                Units.METRIC,
                caller.zone(),
                clock.instant(),
                PretendedClock.aheadOf(clock),
                TickReach.OF_MEMBERS);
    }

    /** By the clock of the world, in which sensors live, also where this server pretends another day. */
    private Instant realNow() {
        return clock.instant().minus(PretendedClock.aheadOf(clock));
    }
}
