package warmshelf.duty;

import static warmshelf.duty.DutySentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import warmshelf.words.FormReader;

/** Which days a coordinator wants filled. */
final class ProposalForm {
    /** Longer than any season's weeks are planned ahead by hand. */
    static final int MOST_DAYS = 84;

    private static final int USUAL_DAYS = 28;
    private static final int MOST_DAYS_AHEAD = 366;

    private ProposalForm() {}

    /** The days and sites to fill. */
    record Span(LocalDate from, int days, List<Named> sites) {
        LocalDate until() {
            return from.plusDays(days);
        }

        /** Every turn in it, by day and walking order. */
        List<Turn> turns() {
            List<Turn> turns = new ArrayList<>();
            from.datesUntil(until()).forEach(day -> sites.forEach(site -> turns.add(new Turn(site.id(), day))));
            return turns;
        }
    }

    /** What stands in the form at first: four weeks from today at every site. */
    static Map<String, List<String>> usual(LocalDate today) {
        return Map.of(
                "from", List.of(today.toString()),
                "days", List.of(String.valueOf(USUAL_DAYS)),
                "site", List.of("all"));
    }

    static Optional<Span> read(FormReader form, List<Named> sites, LocalDate today) {
        LocalDate from = form.date("from", SAY.firstDayField());
        int days = form.wholeNumber("days", SAY.howManyDaysField(), 1, MOST_DAYS);
        String site = form.text("site");
        List<Named> chosen = site.equals("all")
                ? sites
                : sites.stream()
                        .filter(each -> each.id().toString().equals(site))
                        .toList();
        if (chosen.isEmpty() && !sites.isEmpty()) {
            form.refuse("site", SAY.noSuchSite(site.length() > 40 ? "…" : site));
        }
        if (form.ok() && (from.isBefore(today) || from.isAfter(today.plusDays(MOST_DAYS_AHEAD)))) {
            form.refuse("from", SAY.firstWithinAYear(from, today));
        }
        return form.ok() ? Optional.of(new Span(from, days, chosen)) : Optional.empty();
    }
}
