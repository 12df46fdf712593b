package warmshelf.exchange;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import warmshelf.table.TableShape;
import warmshelf.table.TableWriter;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.TableAnswer;
import warmshelf.web.Visitor;

/** What can be taken out as a table, and where tables are brought in. */
final class FilesPages implements Pages {
    private final ExportStore exports;
    private final IncomingLogStore log;

    FilesPages(ExportStore exports, IncomingLogStore log) {
        this.exports = exports;
        this.log = log;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/files", this::show, Role.MEMBER);
        routes.get("/files/tables/{table}", this::send, Role.MEMBER);
    }

    /**
     * @param shape for whom the links lead to tables
     * @param tables the words of all tables
     */
    private record FilesPage(
            TableShape shape, List<OutgoingTable> tables, List<IncomingKind> incoming, List<TakenTable> taken) {}

    private void show(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        String asked = ctx.queryParam(TableAnswer.SHAPE);
        TableShape shape =
                TableShape.named(asked == null ? "" : asked).orElseGet(() -> TableShape.ofCountry(visitor.country()));
        Respond.page(
                ctx,
                "exchange/files.peb",
                new FilesPage(
                        shape,
                        List.of(OutgoingTable.values()),
                        Arrays.stream(IncomingKind.values())
                                .filter(kind -> visitor.coordinator() || !kind.isForCoordinators())
                                .toList(),
                        log.latest(visitor.memberId(), visitor.coordinator(), visitor.zone())));
    }

    private void send(Context ctx) {
        String file = ctx.pathParam("table");
        OutgoingTable table = OutgoingTable.named(file.endsWith(".csv") ? file.substring(0, file.length() - 4) : "")
                .orElseThrow(Refusal::notFound);
        Visitor visitor = Visitor.of(ctx);
        Taker taker = new Taker(visitor.memberId(), visitor.coordinator(), visitor.zone());
        TableAnswer.send(
                ctx,
                "%s-%s".formatted(table.word(), visitor.today()),
                (out, shape) -> exports.write(table, taker, new TableWriter(out, shape, table.columns())));
    }
}
