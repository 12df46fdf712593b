package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.util.UUID;
import warmshelf.tablet.TabletReachPages;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Reading a mat's thermometer. */
public final class ReadingPages implements Pages {
    private final ReadingStore readings;
    private final TabletReachPages reach;
    private final Clock clock;

    ReadingPages(ReadingStore readings, TabletReachPages reach, Clock clock) {
        this.readings = readings;
        this.reach = reach;
        this.clock = clock;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.post("/mats/{id}/readings", this::read, Role.TABLET);
    }

    private void read(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        UUID mat = Respond.id(ctx, "id");
        String name = readings.matName(mat).orElseThrow(Refusal::notFound);
        reach.needMat(visitor, mat);
        FormReader form = new FormReader(ctx.formParamMap());
        double celsius = Reading.celsius(form, visitor.units().temperature());
        if (!form.ok()) {
            Respond.again(ctx, "check/reading.peb", new ReadingPage(form, mat, name, UUID.randomUUID()));
            return;
        }
        UUID id = new EntryIds(clock.instant(), visitor.zone(), readings::isKeptSince).of(form, mat, visitor.today());
        UUID looker = reach.looker(ctx, visitor).orElse(null);
        Decisions.doneOr(readings.add(id, mat, visitor.today(), celsius, looker, visitor.memberId()), visitor.units());
        Respond.seeOther(
                ctx,
                GoOn.to(form.text("then"), "/today"),
                SAY.readingKept(name, visitor.units().temperature(celsius)));
    }

    /**
     * The form of one reading.
     *
     * @param page the random name from which its id is made, so that it counts once a day
     */
    private record ReadingPage(FormReader form, UUID matId, String matName, UUID page) {}
}
