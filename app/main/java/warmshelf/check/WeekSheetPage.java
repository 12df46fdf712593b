package warmshelf.check;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.label.ShortCode;
import warmshelf.sowing.Problem;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/**
 * The sheet of a week, printed or to be typed in.
 *
 * @param onDuty who is down to look, by day
 * @param codes short codes by sowing
 * @param kinds what each kind of look looks for
 * @param careful what of the week's work can hurt skin, eyes or worse
 * @param people who can have looked
 * @param form as typed; empty on the printed sheet
 * @param kept what a form that came back came to; empty where none did
 * @param page the random name from which the entries' ids are made
 */
record WeekSheetPage(
        WeekSheet sheet,
        List<WeekSheetStore.SheetSite> sites,
        Map<LocalDate, TodayStore.OnDuty> onDuty,
        Map<UUID, ShortCode> codes,
        List<KindOfLook> kinds,
        List<String> careful,
        List<Choice> people,
        List<Choice> problemWords,
        FormReader form,
        String kept,
        String page) {

    /** What to look for, said once a sheet. */
    public record KindOfLook(String title, String look) {}

    static List<KindOfLook> kinds(WeekSheet sheet, Units units) {
        return sheet.kinds().stream()
                .map(kind -> new KindOfLook(
                        kind.title(),
                        sheet.lines().stream()
                                .flatMap(line -> line.boxes().stream())
                                .flatMap(box -> box.checks().stream())
                                .filter(check -> check.kind() == kind)
                                .findFirst()
                                .map(check -> check.look(units))
                                .orElse("")))
                .filter(kind -> !kind.look().isEmpty())
                .toList();
    }

    static List<String> careful(WeekSheet sheet) {
        return sheet.lines().stream()
                .flatMap(line -> line.careful().stream())
                .distinct()
                .toList();
    }

    static List<Choice> everyProblem() {
        return Arrays.stream(Problem.values())
                .map(problem -> new Choice(problem.word(), problem.words()))
                .toList();
    }
}
