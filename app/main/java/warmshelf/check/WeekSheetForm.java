package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import warmshelf.sowing.EntryStep;
import warmshelf.words.DayWords;
import warmshelf.words.FormReader;
import warmshelf.words.TemperatureUnit;

/** Reads a sheet that was typed in, each cell by the same rules as a tick that is entered on a page. */
final class WeekSheetForm {
    private final FormReader reader;
    private final WeekSheet sheet;
    private final Instant now;
    private final ZoneId zone;
    private final TemperatureUnit unit;
    private final Set<UUID> present;
    private final EntryIds ids;

    /**
     * A form.
     *
     * @param zone the group's
     * @param unit that thermometers are read in
     * @param present who can have looked
     */
    WeekSheetForm(
            Map<String, List<String>> typed,
            WeekSheet sheet,
            Instant now,
            ZoneId zone,
            TemperatureUnit unit,
            Set<UUID> present) {
        this.reader = new FormReader(typed);
        this.sheet = sheet;
        this.now = now;
        this.zone = zone;
        this.unit = unit;
        this.present = present;
        this.ids = new EntryIds(now, zone, (id, since) -> false);
    }

    /** The field of a sowing on a day. */
    static String cell(UUID sowing, LocalDate day) {
        return "s/%s/%s".formatted(sowing, day);
    }

    /** The field of a mat on a day. */
    static String matCell(UUID mat, LocalDate day) {
        return "m/%s/%s".formatted(mat, day);
    }

    /** The field of a sowing's note. */
    static String note(UUID sowing) {
        return "note/" + sowing;
    }

    /** The field of who looked on a day. */
    static String looker(LocalDate day) {
        return "by/" + day;
    }

    FormReader reader() {
        return reader;
    }

    /**
     * A cell that can be judged.
     *
     * @param noted the note of its line goes with it
     */
    record TypedTick(String field, WeekLine line, Tick tick, boolean noted) {}

    /** A thermometer that can be kept. */
    record TypedReading(String field, Reading reading) {}

    /** Says of what was typed at sowings and mats that are not on the sheet any more that it could not be kept. */
    void refuseStrays() {
        Set<String> known = new HashSet<>();
        for (LocalDate day : sheet.days()) {
            sheet.lines().forEach(line -> known.add(cell(line.id(), day)));
            sheet.mats().forEach(mat -> known.add(matCell(mat.matId(), day)));
        }
        reader.typed().forEach((field, text) -> {
            if (field.matches("[sm]/.*") && !text.isBlank() && !known.contains(field)) {
                reader.refuse(field, SAY.notOnSheet(shown(text)));
            }
        });
    }

    /** The ticks of all cells that can be read, in the order of the sheet; the reader has a sentence for each of the others. */
    List<TypedTick> ticks() {
        List<TypedTick> ticks = new ArrayList<>();
        for (WeekLine line : sheet.lines()) {
            Optional<LocalDate> noteOn = noteOn(line);
            for (WeekLine.Box box : line.boxes()) {
                String field = cell(line.id(), box.day());
                if (!reader.text(field).isEmpty()) {
                    boolean noted = noteOn.filter(box.day()::equals).isPresent();
                    tick(line, box, field, noted ? reader.text(note(line.id())) : "")
                            .ifPresent(tick -> ticks.add(new TypedTick(field, line, tick, noted)));
                }
            }
        }
        return ticks;
    }

    /** A note goes with the last problem of its line, else with the last look. */
    private Optional<LocalDate> noteOn(WeekLine line) {
        if (reader.text(note(line.id())).isEmpty()) {
            return Optional.empty();
        }
        List<LocalDate> filled = line.boxes().stream()
                .map(WeekLine.Box::day)
                .filter(day -> !reader.text(cell(line.id(), day)).isEmpty())
                .toList();
        if (filled.isEmpty()) {
            reader.refuse(note(line.id()), SAY.noteWithoutDay(line.sowing().title()));
            return Optional.empty();
        }
        List<LocalDate> troubled = filled.stream()
                .filter(day -> CellText.read(reader.text(cell(line.id(), day)))
                        .filter(text -> text.problem() != null)
                        .isPresent())
                .toList();
        List<LocalDate> among = troubled.isEmpty() ? filled : troubled;
        return Optional.of(among.get(among.size() - 1));
    }

    private Optional<Tick> tick(WeekLine line, WeekLine.Box box, String field, String note) {
        String typed = reader.text(field);
        String whose = "%s, %s".formatted(line.sowing().title(), DayWords.day(box.day()));
        Optional<CellText> text = CellText.read(typed);
        if (text.isEmpty()) {
            reader.refuse(field, SAY.cellUnfit(whose, shown(typed)));
            return Optional.empty();
        }
        Optional<EntryStep> step = step(text.get(), box, field, whose);
        Optional<UUID> looker = lookedOn(box.day());
        if (step.isEmpty() || looker.isEmpty()) {
            return Optional.empty();
        }
        TickForm form = new TickForm(
                fields(line, box, text.get(), step.get(), note), line.sowing(), LocalDate.ofInstant(now, zone), ids);
        Optional<Tick> tick = form.tick();
        form.reader().problems().values().forEach(problem -> reader.refuse(field, whose + ": " + problem));
        return tick.map(read -> read.seenBy(looker.get()));
    }

    private Optional<EntryStep> step(CellText text, WeekLine.Box box, String field, String whose) {
        if (!text.done()) {
            return Optional.of(EntryStep.LOOK);
        }
        Optional<EntryStep> step = box.step().map(CheckKind::step);
        if (step.isEmpty()) {
            reader.refuse(
                    field,
                    box.stepWithPlace()
                            .map(kind -> SAY.stepNeedsPlace(whose, kind.title()))
                            .orElseGet(() -> SAY.nothingToBeDone(whose)));
        }
        return step;
    }

    private Map<String, List<String>> fields(
            WeekLine line, WeekLine.Box box, CellText text, EntryStep step, String note) {
        Map<String, List<String>> fields = new HashMap<>();
        fields.put("step", List.of(step.word()));
        fields.put("seenOn", List.of(box.day().toString()));
        fields.put("note", List.of(note));
        // The text is part of the name: what is typed anew into a cell that was kept is another entry.
        fields.put("page", List.of(reader.text("page") + "/" + reader.text(cell(line.id(), box.day()))));
        fields.put("sprouted", List.of(text.nothing() && box.isCounted() ? lastCount(line, box) : text.count()));
        if (text.problem() != null) {
            fields.put("problem", List.of(text.problem().word()));
        }
        return fields;
    }

    /** Where nothing was new, the count of the day before stands: the one typed beside it, else the one that was kept. */
    private String lastCount(WeekLine line, WeekLine.Box box) {
        int soFar = box.soFar();
        for (WeekLine.Box earlier : line.boxes()) {
            if (earlier.day().isBefore(box.day())) {
                String count = CellText.read(reader.text(cell(line.id(), earlier.day())))
                        .map(CellText::count)
                        .orElse("");
                soFar = Math.max(soFar, count.isEmpty() ? 0 : Integer.parseInt(count));
            }
        }
        return String.valueOf(soFar);
    }

    /** The readings of all cells that can be read. */
    List<TypedReading> readings() {
        List<TypedReading> readings = new ArrayList<>();
        for (WeekSheet.MatLine mat : sheet.mats()) {
            for (LocalDate day : sheet.days()) {
                String field = matCell(mat.matId(), day);
                if (!reader.text(field).isEmpty()) {
                    reading(mat, day, field).ifPresent(reading -> readings.add(new TypedReading(field, reading)));
                }
            }
        }
        return readings;
    }

    private Optional<Reading> reading(WeekSheet.MatLine mat, LocalDate day, String field) {
        String whose = "%s, %s".formatted(SAY.onMat(mat.name()), DayWords.day(day));
        FormReader cell = new FormReader(Map.of(
                "celsius", List.of(reader.text(field)),
                "page", List.of(reader.text("page") + "/" + reader.text(field))));
        double celsius = Reading.celsius(cell, unit);
        LocalDate today = LocalDate.ofInstant(now, zone);
        if (day.isAfter(today)) {
            cell.refuse("celsius", SAY.dayToCome(day, today));
        } else if (day.isBefore(today.minusDays(TickForm.OLDEST_DAYS))) {
            cell.refuse("celsius", SAY.readingTooOld(day, TickForm.OLDEST_DAYS));
        }
        cell.problems().values().forEach(problem -> reader.refuse(field, whose + ": " + problem));
        Optional<UUID> looker = lookedOn(day);
        return cell.ok() && looker.isPresent()
                ? Optional.of(new Reading(
                        ids.of(cell, mat.matId(), day),
                        mat.matId(),
                        day,
                        OffsetDateTime.ofInstant(now.truncatedTo(ChronoUnit.MILLIS), ZoneOffset.UTC),
                        celsius,
                        "",
                        looker.get()))
                : Optional.empty();
    }

    /** Who looked on a day; without a person of the group nothing of that day is kept. */
    private Optional<UUID> lookedOn(LocalDate day) {
        String typed = reader.text(looker(day));
        Optional<UUID> looker = present.stream()
                .filter(member -> member.toString().equals(typed))
                .findFirst();
        if (looker.isEmpty()) {
            reader.refuse(looker(day), SAY.lookerUnfit(DayWords.day(day)));
        }
        return looker;
    }

    private static String shown(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "…";
    }
}
