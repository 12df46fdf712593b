package warmshelf.duty;

import java.time.LocalDate;
import java.util.List;
import warmshelf.words.FormReader;

/**
 * The rota, with what coordinators set.
 *
 * @param page its days
 * @param rules the hour of each site
 * @param from the first day shown
 * @param before the first day of the page before
 * @param after the first day of the page after
 */
record DutyPage(
        RotaPage page,
        List<Named> sites,
        List<HoursForm.Line> rules,
        List<Named> members,
        FormReader form,
        LocalDate from,
        LocalDate before,
        LocalDate after) {}
