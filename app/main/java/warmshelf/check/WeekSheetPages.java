package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import warmshelf.group.Member;
import warmshelf.group.MemberStore;
import warmshelf.label.SowingCodes;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/**
 * The round of a week on paper, and what was written on it typed in. Cells that can be kept are kept, and the others come back:
 * one word that nobody can read shall not keep a week of looks out of the books, and what was kept counts once however often the
 * sheet is sent.
 */
public final class WeekSheetPages implements Pages {
    private static final String SHEET = "/paper/round";
    private static final String TYPING = SHEET + "/typing";
    private static final String TYPING_TEMPLATE = "check/week-typing.peb";

    private final WeekSheetStore sheets;
    private final SowingCodes codes;
    private final MemberStore members;
    private final LightUntil lightUntil;
    private final BatchStore batches;
    private final Clock clock;

    WeekSheetPages(
            WeekSheetStore sheets,
            SowingCodes codes,
            MemberStore members,
            LightUntil lightUntil,
            BatchStore batches,
            Clock clock) {
        this.sheets = sheets;
        this.codes = codes;
        this.members = members;
        this.lightUntil = lightUntil;
        this.batches = batches;
        this.clock = clock;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(SHEET, ctx -> show(ctx, "check/week.peb"), Role.MEMBER);
        routes.get(TYPING, ctx -> show(ctx, TYPING_TEMPLATE), Role.MEMBER);
        routes.post(SHEET, this::take, Role.MEMBER);
    }

    private void show(Context ctx, String template) {
        WeekSheet sheet = sheet(ctx, new FormReader(ctx.queryParamMap()));
        Respond.page(ctx, template, page(Visitor.of(ctx), sheet, new FormReader(Map.of()), ""));
    }

    private void take(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        WeekSheet sheet = sheet(ctx, new FormReader(ctx.formParamMap()));
        WeekSheetForm form = new WeekSheetForm(
                ctx.formParamMap(),
                sheet,
                clock.instant(),
                visitor.zone(),
                visitor.units().temperature(),
                present().stream().map(Member::id).collect(Collectors.toSet()));
        List<WeekSheetForm.TypedTick> ticks = form.ticks();
        List<WeekSheetForm.TypedReading> readings = form.readings();
        form.refuseStrays();
        List<BatchStore.Numbered> entries = new ArrayList<>();
        ticks.forEach(each -> entries.add(new BatchStore.Numbered(
                each.field(),
                new Sent.AtSowing(
                        each.line().id(),
                        each.tick(),
                        lightUntil.of(() -> each.line().history(), each.tick(), visitor.today())))));
        readings.forEach(each -> entries.add(new BatchStore.Numbered(each.field(), new Sent.AtMat(each.reading()))));
        List<SentAnswer> answers =
                entries.isEmpty() ? List.of() : batches.keep(entries, visitor.memberId(), visitor.units());
        answers.stream()
                .filter(SentAnswer::wasRefused)
                .forEach(answer -> form.reader().refuse(answer.id(), whose(answer, ticks) + answer.sentence()));
        answer(ctx, sheet, form, ticks, answers);
    }

    private static String whose(SentAnswer answer, List<WeekSheetForm.TypedTick> ticks) {
        return ticks.stream()
                .filter(tick -> tick.field().equals(answer.id()))
                .map(tick -> tick.line().sowing().title() + ": ")
                .findFirst()
                .orElse("");
    }

    private void answer(
            Context ctx,
            WeekSheet sheet,
            WeekSheetForm form,
            List<WeekSheetForm.TypedTick> ticks,
            List<SentAnswer> answers) {
        int kept = (int) answers.stream().filter(SentAnswer::isNew).count();
        int refused = form.reader().problems().size();
        if (form.reader().ok()) {
            String notice = answers.isEmpty() ? SAY.sheetEmpty() : SAY.sheetKept(kept, answers.size() - kept);
            Respond.seeOther(ctx, TYPING + "?site=" + sheet.siteId() + "&day=" + sheet.monday(), notice);
            return;
        }
        Set<String> done = new HashSet<>();
        answers.stream().filter(answer -> !answer.wasRefused()).forEach(answer -> done.add(answer.id()));
        ticks.stream()
                .filter(tick -> tick.noted() && done.contains(tick.field()))
                .forEach(tick -> done.add(WeekSheetForm.note(tick.line().id())));
        Map<String, List<String>> left = new HashMap<>(ctx.formParamMap());
        left.keySet().removeAll(done);
        FormReader again = new FormReader(left);
        form.reader().problems().forEach(again::refuse);
        // Read anew, so that what was kept stands in the cells.
        WeekSheet now =
                sheets.of(sheet.siteId(), sheet.monday(), Visitor.of(ctx).today());
        Respond.again(ctx, TYPING_TEMPLATE, page(Visitor.of(ctx), now, again, SAY.sheetKeptPartly(kept, refused)));
    }

    private WeekSheetPage page(Visitor visitor, WeekSheet sheet, FormReader form, String kept) {
        return new WeekSheetPage(
                sheet,
                sheets.sites(),
                sheets.onDuty(sheet.siteId(), sheet.days()),
                codes.of(sheet.lines().stream().map(WeekLine::id).toList(), visitor.memberId()),
                WeekSheetPage.kinds(sheet, visitor.units()),
                WeekSheetPage.careful(sheet),
                present().stream()
                        .map(member -> new Choice(member.id().toString(), member.called()))
                        .toList(),
                WeekSheetPage.everyProblem(),
                form,
                kept,
                UUID.randomUUID().toString());
    }

    private List<Member> present() {
        return members.all().stream().filter(Member::present).toList();
    }

    /** The sheet that was asked for: this week's of the first site, where nothing else was. */
    private WeekSheet sheet(Context ctx, FormReader asked) {
        LocalDate today = Visitor.of(ctx).today();
        LocalDate day = asked.text("day").isEmpty() ? today : asked.date("day", SAY.dayField());
        if (!asked.ok()) {
            throw Refusal.of(
                    HttpStatus.BAD_REQUEST, String.join(" ", asked.problems().values()));
        }
        String typed = asked.text("site");
        List<WeekSheetStore.SheetSite> sites = sheets.sites();
        if (typed.isEmpty() && sites.isEmpty()) {
            return new WeekSheet(new UUID(0, 0), "", WeekSheet.week(day), List.of(), 0);
        }
        return sites.stream()
                .filter(site -> typed.isEmpty() || site.id().toString().equals(typed))
                .findFirst()
                .map(site -> sheets.of(site.id(), day, today))
                .orElseThrow(Refusal::notFound);
    }
}
