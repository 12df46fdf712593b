package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import warmshelf.web.Decisions;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.Counted;

/** For which sites somebody coordinates, given by a coordinator of the whole group. */
public final class CoordinationPages implements Pages {
    private static final String ADDRESS = "/people/{id}/sites";

    private final MemberStore members;
    private final SiteCoordinatorStore coordinators;

    public CoordinationPages(MemberStore members, SiteCoordinatorStore coordinators) {
        this.members = members;
        this.coordinators = coordinators;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(ADDRESS, this::show, Role.COORDINATOR);
        routes.post(ADDRESS, this::set, Role.COORDINATOR);
    }

    /**
     * For which sites.
     *
     * @param ticked the keys of those for which it is so now
     */
    private record CoordinationPage(Member member, List<Choice> sites, Set<String> ticked) {}

    private void show(Context ctx) {
        Member member = present(ctx);
        Set<String> ticked =
                coordinators.of(member.id()).stream().map(UUID::toString).collect(Collectors.toSet());
        Respond.page(ctx, "group/coordination.peb", new CoordinationPage(member, coordinators.sites(), ticked));
    }

    private void set(Context ctx) {
        Member member = present(ctx);
        Set<String> asked = Set.copyOf(ctx.formParams("site"));
        List<Choice> sites = coordinators.sites().stream()
                .filter(site -> asked.contains(site.value()))
                .toList();
        if (sites.size() != asked.size()) {
            throw Refusal.of(HttpStatus.UNPROCESSABLE_CONTENT, SAY.siteUnknown());
        }
        Visitor visitor = Visitor.of(ctx);
        Set<UUID> ids =
                sites.stream().map(site -> UUID.fromString(site.value())).collect(Collectors.toSet());
        Decisions.doneOr(coordinators.set(member.id(), ids, visitor.memberId()), visitor.units());
        Respond.seeOther(
                ctx,
                "/people",
                sites.isEmpty()
                        ? SAY.plainMemberNow(member.name())
                        : SAY.siteCoordinatorNow(
                                member.name(),
                                Counted.all(sites.stream().map(Choice::words).toList())));
    }

    private Member present(Context ctx) {
        Member member = members.find(Respond.id(ctx, "id")).orElseThrow(Refusal::notFound);
        if (!member.present()) {
            throw Refusal.conflict(SAY.hasLeft(member.name()));
        }
        return member;
    }
}
