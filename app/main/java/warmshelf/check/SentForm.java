package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import warmshelf.sowing.Sowing;
import warmshelf.words.FormReader;
import warmshelf.words.TemperatureUnit;

/** Reads one entry that waited on a phone, by the same rules as if it were typed on a page now. */
final class SentForm {
    private static final List<String> TEXTS = List.of(
            "id",
            "step",
            "sprouted",
            "moved",
            "lost",
            "giveAway",
            "problem",
            "note",
            "lightPlace",
            "supersedes",
            "celsius");

    private final JsonNode entry;
    private final ClockSkew skew;
    private final Instant now;
    private final ZoneId zone;
    private String problem = "";

    /**
     * @param now by the server's clock
     * @param zone the group's
     */
    SentForm(JsonNode entry, ClockSkew skew, Instant now, ZoneId zone) {
        this.entry = entry;
        this.skew = skew;
        this.now = now;
        this.zone = zone;
    }

    /** The id as it was sent, so that the phone finds its entry again. */
    String idAsSent() {
        return BatchForm.shown(entry.path("id"));
    }

    boolean isReading() {
        return entry.hasNonNull("mat");
    }

    /** The sowing or mat that it is about; empty where none is named. */
    Optional<UUID> subject() {
        return uuid(isReading() ? "mat" : "sowing");
    }

    /** Who pressed, where somebody said so on a tablet. */
    Optional<UUID> looker() {
        return uuid("seenBy");
    }

    /** Why it cannot be taken, in a sentence. */
    String problem() {
        return problem;
    }

    /** The tick; empty when something of it cannot be taken. */
    Optional<Tick> tick(Sowing sowing) {
        Optional<Instant> seenAt = seenAt();
        Optional<Map<String, List<String>>> typed = typed();
        if (seenAt.isEmpty() || typed.isEmpty()) {
            return Optional.empty();
        }
        LocalDate today = LocalDate.ofInstant(now, zone);
        typed.get()
                .put("seenOn", List.of(LocalDate.ofInstant(seenAt.get(), zone).toString()));
        TickForm form = new TickForm(typed.get(), sowing, today, new EntryIds(now, zone, (id, since) -> false));
        Optional<Tick> tick = form.tick();
        problem = String.join(" ", form.reader().problems().values());
        return tick.map(read ->
                read.fromPhone(new Tick.FromPhone(utc(seenAt.get()), utc(knewUntil(seenAt.get()))), skew.remark()));
    }

    /** The reading; empty when something of it cannot be taken. */
    Optional<Reading> reading(UUID mat) {
        Optional<Instant> seenAt = seenAt();
        Optional<Map<String, List<String>>> typed = typed();
        if (seenAt.isEmpty() || typed.isEmpty()) {
            return Optional.empty();
        }
        TemperatureUnit unit =
                TemperatureUnit.withLetter(entry.path("unit").asText("")).orElse(TemperatureUnit.CELSIUS);
        FormReader form = new FormReader(typed.get());
        double celsius = Reading.celsius(form, unit);
        LocalDate day = LocalDate.ofInstant(seenAt.get(), zone);
        if (day.isBefore(LocalDate.ofInstant(now, zone).minusDays(TickForm.OLDEST_DAYS))) {
            form.refuse("seenAt", SAY.readingTooOld(day, TickForm.OLDEST_DAYS));
        }
        problem = String.join(" ", form.problems().values());
        return form.ok()
                ? Optional.of(new Reading(id(), mat, day, utc(seenAt.get()), celsius, skew.remark(), null))
                : Optional.empty();
    }

    private Optional<Instant> seenAt() {
        Optional<Instant> sent = BatchForm.moment(entry.path("seenAt"));
        if (sent.isEmpty()) {
            problem = SAY.seenAtUnfit(BatchForm.shown(entry.path("seenAt")));
            return Optional.empty();
        }
        Instant seenAt = skew.right(sent.get());
        if (seenAt.isAfter(now.plus(ClockSkew.USUAL))) {
            problem = SAY.tickedAhead(
                    sent.get().truncatedTo(ChronoUnit.SECONDS).atZone(zone).toLocalDateTime());
            return Optional.empty();
        }
        return Optional.of(seenAt.isAfter(now) ? now : seenAt);
    }

    /** The page's own moment is the server's, so it needs no putting right. */
    private Instant knewUntil(Instant seenAt) {
        return BatchForm.moment(entry.path("pageAt")).orElse(seenAt);
    }

    private Optional<Map<String, List<String>>> typed() {
        Map<String, List<String>> typed = new HashMap<>();
        for (String field : TEXTS) {
            JsonNode value = entry.path(field);
            if (value.isContainerNode() || value.isBoolean()) {
                return refuse(field, value, SAY.textOrNumber());
            }
            if (!value.isMissingNode() && !value.isNull()) {
                typed.put(field, List.of(value.asText()));
            }
        }
        JsonNode finished = entry.path("finished");
        if (!finished.isMissingNode() && !finished.isNull() && !finished.isBoolean()) {
            return refuse("finished", finished, SAY.trueOrFalse());
        }
        typed.put("finished", List.of(finished.asBoolean(false) ? "yes" : ""));
        if (uuid("id").isEmpty()) {
            return refuse("id", entry.path("id"), SAY.uuidOfPhone());
        }
        return Optional.of(typed);
    }

    private Optional<Map<String, List<String>>> refuse(String field, JsonNode value, String accepted) {
        problem = SAY.sentUnfit(field, BatchForm.shown(value), accepted);
        return Optional.empty();
    }

    private UUID id() {
        return uuid("id").orElseThrow();
    }

    private Optional<UUID> uuid(String field) {
        String text = entry.path(field).asText("");
        try {
            UUID id = UUID.fromString(text);
            return id.toString().equalsIgnoreCase(text) ? Optional.of(id) : Optional.empty();
        } catch (IllegalArgumentException notAnId) {
            return Optional.empty();
        }
    }

    private static OffsetDateTime utc(Instant moment) {
        return OffsetDateTime.ofInstant(moment.truncatedTo(ChronoUnit.MILLIS), ZoneOffset.UTC);
    }
}
