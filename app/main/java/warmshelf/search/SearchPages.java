package warmshelf.search;

import static warmshelf.search.SearchSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.stream.Stream;
import warmshelf.crop.CropCatalogue;
import warmshelf.db.Database;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;
import warmshelf.words.Needle;
import warmshelf.words.PartOfList;

/** Finds people, sowings, seed and places by parts of their names or codes. */
public final class SearchPages implements Pages {
    private static final int LONGEST = 80;
    private static final int LAST_PAGE = 100_000;

    private final SearchStore store;

    public SearchPages(Database database, CropCatalogue crops) {
        this.store = new SearchStore(database, crops);
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/search", this::search, Role.MEMBER);
    }

    /**
     * What was found.
     *
     * @param q as it was typed
     * @param groups those of this page, kind by kind
     */
    private record SearchPage(FormReader form, String q, PartOfList<Hit> part, List<Group> groups) {
        /**
         * What was found of one kind.
         *
         * @param total over all pages
         */
        private record Group(String kind, long total, List<Hit> hits) {}

        static SearchPage of(FormReader form, List<Hit> hits, int page) {
            PartOfList<Hit> part = PartOfList.of(hits, page);
            List<Group> groups = Stream.of(Hit.Kind.values())
                    .map(kind -> new Group(kind.name(), count(hits, kind), of(part.lines(), kind)))
                    .filter(group -> !group.hits().isEmpty())
                    .toList();
            return new SearchPage(form, form.text("find"), part, groups);
        }

        private static List<Hit> of(List<Hit> hits, Hit.Kind kind) {
            return hits.stream().filter(hit -> hit.kind() == kind).toList();
        }

        private static long count(List<Hit> hits, Hit.Kind kind) {
            return of(hits, kind).size();
        }
    }

    private void search(Context ctx) {
        FormReader form = new FormReader(ctx.queryParamMap());
        String typed = form.optionalText("find", SAY.searchField(), LONGEST);
        int page =
                form.optionalWholeNumber("page", SAY.pageField(), 1, LAST_PAGE).orElse(1);
        Needle needle = Needle.of(typed);
        if (!form.ok()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        Visitor visitor = Visitor.of(ctx);
        List<Hit> hits = form.ok() && !needle.isEmpty()
                ? store.find(needle, new SearchStore.Reader(visitor.memberId(), visitor.coordinator(), visitor.today()))
                : List.of();
        Respond.page(ctx, "search/search.peb", SearchPage.of(form, hits, page));
    }
}
