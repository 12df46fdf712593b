package warmshelf.frost;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What the frost page shows.
 *
 * @param view the dates and what they rest on; null when the place is not known
 * @param similar postcodes that may have been meant
 */
public record FrostPage(int season, @Nullable View view, List<PostcodePlace> similar) {

    static FrostPage of(FrostForm form, int season) {
        return new FrostPage(
                season, form.climate().map(climate -> View.of(climate, season)).orElse(null), form.similar());
    }

    /** The dates of one place. */
    public record View(
            String place,
            List<Risk> risks,
            String springSentence,
            String autumnSentence,
            List<Fact> facts,
            List<String> notes,
            String caution,
            FrostChart springChart,
            FrostChart autumnChart) {

        private static final DateTimeFormatter DAY_AND_MONTH = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

        static View of(FrostClimate climate, int season) {
            return new View(
                    climate.place(),
                    Stream.of(0.5, 0.3, 0.1)
                            .map(risk -> Risk.of(climate, risk, season))
                            .toList(),
                    spring(climate, season),
                    autumn(climate, season),
                    FrostFacts.of(climate),
                    notesBesidesCaution(climate),
                    FrostNotes.FROST_POCKET,
                    FrostChart.spring(climate.spring(), season),
                    FrostChart.autumn(climate.autumn(), season));
        }

        /** The caution about frost pockets has its own place on the page, beside the dates. */
        private static List<String> notesBesidesCaution(FrostClimate climate) {
            return climate.evidence().notes().stream()
                    .filter(note -> !note.equals(FrostNotes.FROST_POCKET))
                    .toList();
        }

        private static String spring(FrostClimate climate, int season) {
            return climate.lastSpringFrost(0.1, season)
                    .map(day ->
                            "After " + DAY_AND_MONTH.format(day) + " only one spring in ten still has a frost here.")
                    .orElse("Fewer than one spring in ten has any frost here.");
        }

        private static String autumn(FrostClimate climate, int season) {
            return climate.firstAutumnFrost(0.1, season)
                    .map(day ->
                            "Before " + DAY_AND_MONTH.format(day) + " only one autumn in ten has had a frost already.")
                    .orElse("Fewer than one autumn in ten has any frost here.");
        }
    }

    /**
     * The two dates at one risk.
     *
     * @param spring day after which that share of springs still has a frost; null when fewer have any
     * @param autumn day before which that share of autumns already had one; null when fewer have any
     */
    public record Risk(
            int percent,
            String words,
            @Nullable LocalDate spring,
            @Nullable LocalDate autumn) {
        static Risk of(FrostClimate climate, double risk, int season) {
            int percent = (int) Math.round(100 * risk);
            return new Risk(
                    percent,
                    percent == 50 ? "an even chance" : percent / 10 + " in 10",
                    climate.lastSpringFrost(risk, season).orElse(null),
                    climate.firstAutumnFrost(risk, season).orElse(null));
        }
    }

    /** One line of what the dates rest on; what holds for both seasons is told once, in {@code spring}, with an empty {@code autumn}. */
    public record Fact(String name, String spring, String autumn) {}
}
