package warmshelf.plan;

import static warmshelf.plan.PlanSentences.SAY;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** Reads on which days a mat cannot be used, and why. */
final class OutForm {
    private static final int FARTHEST_DAYS = 400;

    private OutForm() {}

    /** @param to the day after the last */
    record Days(UUID mat, LocalDate from, LocalDate to, String reason) {}

    /** Empty where something typed cannot be taken, which the form says then. */
    static Optional<Days> read(FormReader form, List<Choice> mats, LocalDate today) {
        String mat = form.text("mat");
        if (mats.stream().noneMatch(choice -> choice.value().equals(mat))) {
            form.refuse("mat", SAY.matUnknown());
        }
        LocalDate first = form.date("first", SAY.firstDayField());
        LocalDate last = form.date("last", SAY.lastDayField());
        String reason = form.requiredText("reason", SAY.reasonField(), 200);
        if (form.ok()) {
            refuseOddDays(form, first, last, today);
        }
        return form.ok()
                ? Optional.of(new Days(UUID.fromString(mat), first, last.plusDays(1), reason))
                : Optional.empty();
    }

    private static void refuseOddDays(FormReader form, LocalDate first, LocalDate last, LocalDate today) {
        LocalDate farthest = today.plusDays(FARTHEST_DAYS);
        if (first.isBefore(today) || first.isAfter(farthest)) {
            form.refuse("first", SAY.firstDayUnfit(first, today, farthest));
        } else if (last.isBefore(first) || last.isAfter(farthest)) {
            form.refuse("last", SAY.lastDayUnfit(last, first, farthest));
        }
    }
}
