package warmshelf.program;

import static warmshelf.program.ProgramSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import warmshelf.frost.garden.DoubtfulNight;
import warmshelf.frost.garden.Night;
import warmshelf.frost.garden.NightForm;
import warmshelf.words.Numbers;
import warmshelf.words.Units;

/** Nights that a script sends, each judged as if it were typed on the thermometer's page. */
final class SentNights {
    /** The most nights at once: a year and some. */
    static final int MOST = 400;

    private final SentFields body;
    private final boolean sure;
    private final SortedMap<LocalDate, Double> celsius = new TreeMap<>();
    private final Map<LocalDate, SentFields> fields = new TreeMap<>();

    SentNights(SentFields body, LocalDate today) {
        this.body = body.only(Set.of("nights", "sure"));
        this.sure = body.truth("sure");
        body.objects("nights", MOST).forEach(night -> read(night, today));
    }

    private void read(SentFields night, LocalDate today) {
        night.only(Set.of("onDay", "lowestCelsius"));
        String day = night.text("onDay");
        String lowest = night.number("lowestCelsius");
        NightForm form = NightForm.of(Map.of("day", List.of(day), "temperature", List.of(lowest)), today, Units.METRIC);
        form.problems()
                .forEach((field, sentence) -> night.refuse(field.equals("day") ? "onDay" : "lowestCelsius", sentence));
        if (form.ok() && celsius.put(form.day(), Numbers.tenths(form.celsius())) != null) {
            night.refuse("onDay", SAY.nightTwice(day));
        }
        fields.put(form.day(), night);
    }

    /** Asks back about doubtful temperatures, seen among these and those noted before, unless the script is sure of them. */
    void askBack(Collection<Night> noted) {
        if (sure) {
            return;
        }
        List<Night> all = new ArrayList<>();
        noted.stream().filter(night -> !celsius.containsKey(night.day())).forEach(all::add);
        celsius.forEach((day, lowest) -> all.add(new Night(day, lowest, "")));
        celsius.forEach((day, lowest) -> DoubtfulNight.why(day, lowest, all)
                .ifPresent(why -> Objects.requireNonNull(fields.get(day))
                        .refuse("lowestCelsius", SAY.nightDoubtful(why.words(Units.METRIC)))));
    }

    /** Those that are not noted so already. */
    SortedMap<LocalDate, Double> without(Collection<Night> noted) {
        SortedMap<LocalDate, Double> fresh = new TreeMap<>(celsius);
        noted.forEach(night -> fresh.remove(night.day(), night.celsius()));
        return fresh;
    }

    Map<String, String> problems() {
        return body.problems();
    }

    /** Celsius by the morning on which it was read; none where something cannot be used. */
    SortedMap<LocalDate, Double> celsius() {
        return celsius;
    }
}
