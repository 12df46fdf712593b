package warmshelf.duty;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The two weeks of the rota as a page shows them. */
public record RotaPage(List<Day> days) {

    /** One day, with one cell for each site. */
    public record Day(LocalDate day, boolean past, List<Cell> cells) {}

    /**
     * Who looks at a site on a day.
     *
     * @param memberId who is shown as chosen; empty: nobody
     * @param wasId who has the day as it stands; empty: nobody
     * @param left whether that member has left the group
     * @param standIn who stands in; empty: nobody
     * @param mine whether the day is the visitor's own and to come
     * @param asked whether somebody is asked to take it
     */
    public record Cell(
            String turn,
            UUID siteId,
            String site,
            String memberId,
            String wasId,
            String member,
            boolean left,
            String standIn,
            boolean mine,
            boolean asked) {}

    /**
     * What a page of the rota is made from.
     *
     * @param typed what was chosen on a form that comes back, by field name
     */
    record Source(
            List<Named> sites,
            Map<Turn, DutyStore.Holder> rota,
            Map<Turn, Named> standIns,
            List<Swap> swaps,
            Map<String, String> typed) {}

    static RotaPage of(LocalDate from, int days, Source source, UUID visitor, LocalDate today) {
        return new RotaPage(from.datesUntil(from.plusDays(days))
                .map(day -> new Day(
                        day,
                        day.isBefore(today),
                        source.sites().stream()
                                .map(site -> cell(site, day, source, visitor, today))
                                .toList()))
                .toList());
    }

    private static Cell cell(Named site, LocalDate day, Source source, UUID visitor, LocalDate today) {
        Turn turn = new Turn(site.id(), day);
        DutyStore.@Nullable Holder holder = source.rota().get(turn);
        String was = holder == null ? "" : holder.id().toString();
        Named standIn = day.isBefore(today) ? null : source.standIns().get(turn);
        return new Cell(
                turn.words(),
                site.id(),
                site.name(),
                source.typed().getOrDefault(RotaForm.DUTY + turn.words(), was),
                was,
                holder == null ? "" : holder.name(),
                holder != null && holder.left(),
                standIn == null ? "" : standIn.name(),
                was.equals(visitor.toString()) && !day.isBefore(today),
                source.swaps().stream().anyMatch(swap -> swap.turn().equals(turn) && swap.isOpen(today)));
    }
}
