package warmshelf.group;

import java.util.UUID;
import warmshelf.decision.Decision;

/** Opens the group: its profile, its first coordinator and that person's session come to be together or not at all. */
public final class OpeningStore {
    private final AdmissionStore admissions;
    private final MemberStore members;
    private final GroupStore group;

    public OpeningStore(AdmissionStore admissions, MemberStore members, GroupStore group) {
        this.admissions = admissions;
        this.members = members;
        this.group = group;
    }

    boolean opened() {
        return group.opened();
    }

    Decision<String> open(Link link, GroupProfile profile, NewMember person) {
        return admissions.byLink(link, sql -> {
            UUID id = members.add(sql, person, true, "opened the group");
            group.open(sql, profile, id);
            return id;
        });
    }
}
