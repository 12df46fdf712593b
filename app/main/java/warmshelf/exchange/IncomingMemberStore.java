package warmshelf.exchange;

import static warmshelf.exchange.ExchangeSentences.SAY;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.group.InviteForm;
import warmshelf.group.Link;
import warmshelf.group.LinkPurpose;
import warmshelf.group.LinkStore;
import warmshelf.group.Member;
import warmshelf.group.MemberStore;
import warmshelf.table.TableRow;

/** Makes a link to join by for each name. */
final class IncomingMemberStore implements IncomingRows {
    private static final Map<String, String> COLUMNS = Map.of("note", "name", "role", "role");

    private final DSLContext within;
    private final LinkStore store;
    private final UUID by;
    private final boolean keep;
    private final Map<String, Member> members = new HashMap<>();
    private final Set<String> invited = new HashSet<>();
    private final Set<String> met = new HashSet<>();
    private final List<MadeLink> made = new ArrayList<>();

    IncomingMemberStore(DSLContext within, MemberStore members, LinkStore links, UUID by, boolean keep) {
        this.within = within;
        this.store = links;
        this.by = by;
        this.keep = keep;
        // those present come first
        members.all().forEach(member -> this.members.putIfAbsent(Member.key(member.name()), member));
        links.open().stream()
                .filter(link -> !link.forSigningIn())
                .map(Link::note)
                .forEach(note -> invited.add(Member.key(note)));
    }

    @Override
    public RowJudgement judge(TableRow row) {
        String role = row.cell("role").toLowerCase(Locale.ROOT);
        InviteForm form = InviteForm.of(
                Map.of("note", List.of(row.cell("name")), "role", List.of(role.isEmpty() ? "member" : role)));
        if (!form.reader().ok()) {
            return new RowJudgement.Wrong(form.reader().problems().entrySet().stream()
                    .map(each -> new RowTrouble(
                            row.number(), COLUMNS.getOrDefault(each.getKey(), each.getKey()), each.getValue()))
                    .toList());
        }
        String key = Member.key(form.note());
        if (!met.add(key)) {
            return new RowJudgement.Wrong(List.of(new RowTrouble(row.number(), "name", SAY.nameTwice(form.note()))));
        }
        Member member = members.get(key);
        if (member != null) {
            return new RowJudgement.LeftOut(member.present() ? SAY.memberThere() : SAY.memberLeft());
        }
        if (invited.contains(key)) {
            return new RowJudgement.LeftOut(SAY.invitedAlready());
        }
        if (keep) {
            String token = store.makeInvite(within, form.coordinator(), form.note(), by);
            made.add(new MadeLink(form.note(), LinkPurpose.JOIN.address(token)));
        }
        return new RowJudgement.Good(
                form.coordinator() ? SAY.joinsAsCoordinator(form.note()) : SAY.joinsAsMember(form.note()));
    }

    @Override
    public List<MadeLink> links() {
        return made;
    }
}
