package warmshelf.frost.garden;

import static warmshelf.frost.garden.GardenSentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** Many nights as they are typed or pasted in, one a line. All lines must be right, or none counts. */
public final class ManyNightsForm {
    static final int MOST_LINES = 400;
    private static final int MOST_PROBLEMS = 30;
    private static final String FIELD = "nights";

    private final FormReader reader;
    private final String text;
    private final Units units;
    private final LocalDate today;
    private final SortedMap<LocalDate, Double> nights = new TreeMap<>();
    private final List<String> lineProblems = new ArrayList<>();
    private final List<String> doubts = new ArrayList<>();

    private ManyNightsForm(Map<String, List<String>> typed, LocalDate today, Units units) {
        this.reader = new FormReader(typed);
        this.text = reader.text(FIELD);
        this.units = units;
        this.today = today;
    }

    static ManyNightsForm blank(LocalDate today, Units units) {
        return new ManyNightsForm(Map.of(), today, units);
    }

    static ManyNightsForm of(Map<String, List<String>> typed, LocalDate today, Units units) {
        ManyNightsForm form = new ManyNightsForm(typed, today, units);
        form.read();
        return form;
    }

    private void read() {
        if (text.isEmpty()) {
            reader.refuse(FIELD, SAY.noNights());
            return;
        }
        List<String> lines = text.lines().toList();
        int filled = (int) lines.stream().filter(line -> !line.isBlank()).count();
        if (filled > MOST_LINES) {
            reader.refuse(FIELD, SAY.tooManyLines(filled, MOST_LINES));
            return;
        }
        NightLine reading = new NightLine(today, units);
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isBlank()) {
                add(i + 1, reading.read(lines.get(i)));
            }
        }
        if (!lineProblems.isEmpty()) {
            reader.refuse(FIELD, SAY.linesUnread(lineProblems.size(), filled));
        }
    }

    private void add(int number, NightLine.Read read) {
        String problem = read.problem();
        if (problem == null && nights.put(read.day(), read.celsius()) != null) {
            problem = SAY.dayTwice(read.day().toString());
        }
        if (problem != null) {
            lineProblems.add(SAY.lineProblem(number, problem));
        }
    }

    /** Asks back once about doubtful temperatures, seen among those typed and those noted before. */
    void askBack(Collection<Night> noted) {
        if (!reader.ok()) {
            return;
        }
        List<Night> all = new ArrayList<>();
        noted.stream().filter(night -> !nights.containsKey(night.day())).forEach(all::add);
        nights.forEach((day, celsius) -> all.add(new Night(day, celsius, "")));
        nights.forEach((day, celsius) -> DoubtfulNight.why(day, celsius, all)
                .ifPresent(why -> doubts.add(SAY.doubtOfDay(day.toString(), why.words(units)))));
        if (!doubts.isEmpty() && !reader.ticked("sure")) {
            reader.refuse("sure", SAY.sureOfMany(doubts.size()));
        }
    }

    boolean ok() {
        return reader.ok();
    }

    /** Celsius by the morning on which it was read. */
    SortedMap<LocalDate, Double> nights() {
        return nights;
    }

    /** A sentence for each line that cannot be read, and for doubtful nights; only the first where there are many. */
    public List<String> sentences() {
        List<String> all = lineProblems.isEmpty() ? doubts : lineProblems;
        if (all.size() <= MOST_PROBLEMS) {
            return all;
        }
        List<String> first = new ArrayList<>(all.subList(0, MOST_PROBLEMS));
        first.add(SAY.andMore(all.size() - MOST_PROBLEMS));
        return first;
    }

    public boolean isDoubtful() {
        return !doubts.isEmpty();
    }

    /** The text as typed, all of it: a long list is not cut short. */
    public Map<String, String> typed() {
        Map<String, String> typed = new LinkedHashMap<>(reader.typed());
        typed.put(FIELD, text);
        return typed;
    }

    public Map<String, String> problems() {
        return reader.problems();
    }
}
