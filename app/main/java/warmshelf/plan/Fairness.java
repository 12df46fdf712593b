package warmshelf.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.allocation.SpaceRequest;

/**
 * How the mats of a season are shared.
 *
 * @param quarterDays given to all together: one quarter of a place for one day each
 */
public record Fairness(List<Share> shares, int quarterDays, int members, int firstChoicesMet) {

    /**
     * A request of the season.
     *
     * @param choice its rank among its member's own; 0 when it was refused
     * @param askedQuarterDays quarters times the days that suit best
     * @param gotQuarterDays on mats, begun or published
     */
    public record Asking(
            UUID memberId,
            String member,
            String variety,
            SpaceRequest.State state,
            int choice,
            int askedQuarterDays,
            int gotQuarterDays,
            String reason) {
        public boolean isPlaced() {
            return state == SpaceRequest.State.PLACED;
        }
    }

    /** What one member asked for and got; {@code without} are the requests that have no place. */
    public record Share(
            String member,
            int requests,
            int placed,
            boolean firstChoiceMet,
            int askedQuarterDays,
            int gotQuarterDays,
            double share,
            List<Asking> without) {}

    /** Of the requests in the order of their members. */
    static Fairness of(List<Asking> askings) {
        // Two people may bear one name.
        Map<UUID, List<Asking>> byMember = new LinkedHashMap<>();
        askings.forEach(asking -> byMember.computeIfAbsent(asking.memberId(), none -> new ArrayList<>())
                .add(asking));
        int all = askings.stream().mapToInt(Asking::gotQuarterDays).sum();
        List<Share> shares =
                byMember.values().stream().map(own -> share(own, all)).toList();
        int met = (int) shares.stream().filter(Share::firstChoiceMet).count();
        return new Fairness(shares, all, shares.size(), met);
    }

    private static Share share(List<Asking> askings, int all) {
        int got = askings.stream().mapToInt(Asking::gotQuarterDays).sum();
        return new Share(
                askings.get(0).member(),
                askings.size(),
                (int) askings.stream().filter(Asking::isPlaced).count(),
                askings.stream().anyMatch(asking -> asking.choice() == 1 && asking.isPlaced()),
                askings.stream().mapToInt(Asking::askedQuarterDays).sum(),
                got,
                all == 0 ? 0 : (double) got / all,
                askings.stream().filter(asking -> !asking.isPlaced()).toList());
    }
}
