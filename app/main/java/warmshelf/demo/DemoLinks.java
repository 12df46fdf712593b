package warmshelf.demo;

import static warmshelf.demo.DemoSentences.SAY;

import java.util.List;
import java.util.function.Predicate;
import warmshelf.check.TodayStore;
import warmshelf.group.LinkPurpose;
import warmshelf.group.LinkStore;
import warmshelf.group.Member;
import warmshelf.group.MemberStore;

/** Makes a sign-in link each for a member, a coordinator and the person on duty. */
final class DemoLinks {
    /** The member whose sowings are at the most stages. */
    private static final String MEMBER = "Dev Anand";

    private final MemberStore members;
    private final LinkStore links;

    DemoLinks(MemberStore members, LinkStore links) {
        this.members = members;
        this.links = links;
    }

    /** Whom a link signs in, and its path on this server. */
    record SignIn(String who, String path) {}

    /** The links; without the third when nobody is on duty, as in a demo that is opened again weeks later. */
    List<SignIn> make(List<TodayStore.OnDuty> onDuty) {
        List<Member> all = members.all();
        List<SignIn> made = new java.util.ArrayList<>();
        made.add(signIn(SAY.member(), all, member -> member.name().equals(MEMBER)));
        made.add(signIn(SAY.coordinator(), all, Member::coordinator));
        onDuty.stream()
                .findFirst()
                .ifPresent(duty -> made.add(signIn(
                        SAY.onDutyAt(duty.site()), all, member -> member.id().equals(duty.memberId()))));
        return made;
    }

    private SignIn signIn(String role, List<Member> all, Predicate<Member> which) {
        Member member = all.stream().filter(which).findFirst().orElseThrow();
        String token = links.makeSignIn(member, null, null);
        return new SignIn(member.name() + ", " + role, LinkPurpose.SIGN_IN.address(token));
    }
}
