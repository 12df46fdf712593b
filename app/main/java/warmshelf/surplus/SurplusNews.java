package warmshelf.surplus;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.sowing.History;
import warmshelf.sowing.Sowing;
import warmshelf.web.Aside;
import warmshelf.web.Visitor;

/** What Today tells of seedlings to give away: to the two people what waits between them, to a grower what is left over. */
public final class SurplusNews implements Aside {
    private final SurplusBookStore book;

    public SurplusNews(SurplusBookStore book) {
        this.book = book;
    }

    /** Plants that are still to be handed over, or that the other side ended; {@code mine} where the visitor takes them. */
    public record Between(Surplus surplus, Taking taking, boolean mine) {}

    /** A sowing of the visitor's of which more is alive than was wanted. */
    public record LeftOver(Sowing sowing, int alive, int plants) {}

    @Override
    public Map<String, Object> model(Visitor visitor) {
        SurplusStore.Moment moment = new SurplusStore.Moment(visitor.today(), visitor.season());
        List<Surplus> all = book.all(moment);
        UUID me = visitor.memberId();
        return Map.of(
                "surplusPromised", between(all, me, true),
                "surplusEnded", between(all, me, false),
                "surplusLeft",
                        book.leftOver(me, moment).stream()
                                .map(SurplusNews::leftOver)
                                .toList());
    }

    private static LeftOver leftOver(History history) {
        return new LeftOver(
                history.sowing(),
                history.progress().alive(),
                SurplusJudge.beyondWanted(history.sowing(), history.progress()));
    }

    /** What stands between a member and others: still to be handed over, or ended by the other side. */
    static List<Between> between(List<Surplus> all, UUID member, boolean promised) {
        return all.stream()
                .flatMap(surplus -> surplus.takings().stream()
                        .filter(taking -> taking.memberId().equals(member) || surplus.isGrownBy(member))
                        .filter(taking ->
                                promised ? taking.isPromised() : !taking.stands() && !member.equals(taking.endedById()))
                        .map(taking ->
                                new Between(surplus, taking, taking.memberId().equals(member))))
                .toList();
    }
}
