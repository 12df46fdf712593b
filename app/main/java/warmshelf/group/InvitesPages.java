package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import warmshelf.web.BrowserSession;
import warmshelf.web.Pages;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;

/** Many are invited at once: names are pasted, and each gets a link with a message to copy. */
public final class InvitesPages implements Pages {
    private static final String TEMPLATE = "group/invites.peb";

    private final MemberStore members;
    private final LinkStore links;
    private final BrowserSession browsers;

    public InvitesPages(MemberStore members, LinkStore links, BrowserSession browsers) {
        this.members = members;
        this.links = links;
        this.browsers = browsers;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get("/people/invites", this::blank, Role.COORDINATOR);
        routes.post("/people/invites", this::invite, Role.COORDINATOR);
    }

    /** Somebody's link, in a message that can be sent as it stands. */
    private record Made(String name, String message) {}

    /**
     * Names to paste, or what was made of them.
     *
     * @param known who belongs to the group or has an open link already, and got none
     * @param onlyHere the address, where it leads to this machine only; else empty
     */
    private record InvitesPage(FormReader form, List<Made> made, List<String> known, String onlyHere) {}

    private void blank(Context ctx) {
        Respond.page(ctx, TEMPLATE, page(ctx, new FormReader(Map.of()), List.of(), List.of()));
    }

    private void invite(Context ctx) {
        NamesForm form = new NamesForm(ctx.formParamMap());
        List<String> names = form.names();
        if (!form.reader().ok()) {
            Respond.again(ctx, TEMPLATE, page(ctx, form.reader(), List.of(), List.of()));
            return;
        }
        Visitor visitor = Visitor.of(ctx);
        Set<String> known = known();
        Map<Boolean, List<String>> byKnown = names.stream()
                .collect(Collectors.partitioningBy(name -> known.contains(name.toLowerCase(Locale.ROOT))));
        List<Made> made = new ArrayList<>();
        links.makeInvites(byKnown.getOrDefault(false, List.of()), visitor.memberId())
                .forEach((name, token) -> {
                    String address = browsers.wholeAddress(ctx, LinkPurpose.JOIN.address(token));
                    made.add(new Made(name, SAY.inviteMessage(name, visitor.groupName(), address)));
                });
        // Shown only now, so the page itself is the answer.
        Respond.page(ctx, TEMPLATE, page(ctx, new FormReader(Map.of()), made, byKnown.getOrDefault(true, List.of())));
    }

    /** Those who need no link. */
    private Set<String> known() {
        return Stream.concat(
                        members.all().stream().filter(Member::present).map(Member::name),
                        links.open().stream()
                                .filter(link -> !link.forSigningIn())
                                .map(Link::note))
                .map(name -> name.toLowerCase(Locale.ROOT))
                .collect(Collectors.toSet());
    }

    private InvitesPage page(Context ctx, FormReader form, List<Made> made, List<String> known) {
        return new InvitesPage(
                form, made, known, browsers.addressOfThisMachineOnly(ctx).orElse(""));
    }
}
