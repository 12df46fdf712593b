package warmshelf.duty;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import warmshelf.words.DayWords;

/**
 * A proposal as a coordinator reads it.
 *
 * @param days the days in order
 * @param shares who serves how often, the least served first
 * @param given how many turns somebody is proposed for
 * @param nobody the days that nobody can take, by site
 */
public record ProposalPage(List<Day> days, List<Share> shares, int given, List<Gap> nobody) {

    /** The days at a site that nobody can take, for example 'Thu 4 Mar, Fri 5 Mar'. */
    public record Gap(String site, String days) {}

    /** One day, with one cell for each site. */
    public record Day(LocalDate day, List<Cell> cells) {}

    /** Who is on the rota already, or is proposed; an empty name when nobody can. */
    public record Cell(String turn, String site, String memberId, String member, boolean proposed) {}

    /** How many duties somebody has, of the last 60 days and planned, and how many the proposal adds. */
    public record Share(String member, int has, int more) {
        public int getThen() {
            return has + more;
        }
    }

    static ProposalPage of(
            ProposalForm.Span span, Map<Turn, DutyStore.Holder> rota, FairRota.Proposal proposal, RotaBook book) {
        Map<UUID, Long> more =
                proposal.given().values().stream().collect(Collectors.groupingBy(Volunteer::id, Collectors.counting()));
        List<Share> shares = book.volunteers().stream()
                .map(each -> new Share(
                        each.name(),
                        book.served(each.id()),
                        more.getOrDefault(each.id(), 0L).intValue()))
                .sorted(Comparator.comparingInt(Share::getThen).thenComparing(Share::member))
                .toList();
        List<Day> days = new ArrayList<>();
        span.from()
                .datesUntil(span.until())
                .forEach(day -> days.add(new Day(
                        day,
                        span.sites().stream()
                                .map(site -> cell(site, day, rota, proposal))
                                .toList())));
        List<Gap> nobody = span.sites().stream()
                .map(site -> new Gap(site.name(), daysAt(site, proposal.nobody())))
                .filter(gap -> !gap.days().isEmpty())
                .toList();
        return new ProposalPage(days, shares, proposal.given().size(), nobody);
    }

    private static String daysAt(Named site, List<Turn> turns) {
        return turns.stream()
                .filter(turn -> turn.site().equals(site.id()))
                .map(turn -> DayWords.day(turn.day()))
                .collect(Collectors.joining(", "));
    }

    private static Cell cell(Named site, LocalDate day, Map<Turn, DutyStore.Holder> rota, FairRota.Proposal proposal) {
        Turn turn = new Turn(site.id(), day);
        DutyStore.Holder holder = rota.get(turn);
        Volunteer given = proposal.given().get(turn);
        if (holder != null) {
            return new Cell(turn.words(), site.name(), holder.id().toString(), holder.name(), false);
        }
        return given == null
                ? new Cell(turn.words(), site.name(), "", "", false)
                : new Cell(turn.words(), site.name(), given.id().toString(), given.name(), true);
    }
}
