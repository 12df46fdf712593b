package warmshelf.duty;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import warmshelf.check.PlaceAddress;
import warmshelf.check.Round;
import warmshelf.check.RoundStore;
import warmshelf.web.Aside;
import warmshelf.web.Visitor;

/** What duty asks of somebody today: a day to take, or a round to walk in another's stead. */
final class DutyNews implements Aside {
    private final WatchStore watches;
    private final RoundStore rounds;
    private final Supplier<OffsetDateTime> clock;

    DutyNews(WatchStore watches, RoundStore rounds, Supplier<OffsetDateTime> clock) {
        this.watches = watches;
        this.rounds = rounds;
        this.clock = clock;
    }

    @Override
    public Map<String, Object> model(Visitor visitor) {
        WatchStore.Watch watch = watches.of(visitor.today());
        LocalTime now = timeOfDay(visitor);
        return Map.of(
                "standIn",
                standIns(visitor.memberId(), visitor.today(), now),
                "lateRounds",
                visitor.coordinator() ? late(watch, now) : List.of(),
                "swapsAsked",
                watch.swaps().stream()
                        .filter(swap -> swap.asks(visitor.memberId(), visitor.today()))
                        .toList());
    }

    /** The rounds that somebody is to walk by now because whoever is on duty has not. */
    List<LateRound> standIns(UUID member, LocalDate day, LocalTime now) {
        WatchStore.Watch watch = watches.of(day);
        // read for those only whom it may concern
        return watch.sites().stream().anyMatch(site -> site.isPast(now) && site.standsIn(member))
                ? late(watch, now).stream()
                        .filter(round -> round.standsIn(member))
                        .toList()
                : List.of();
    }

    private LocalTime timeOfDay(Visitor visitor) {
        return clock.get().atZoneSameInstant(visitor.zone()).toLocalTime();
    }

    private List<LateRound> late(WatchStore.Watch watch, LocalTime now) {
        // most of the day no hour has passed, and the round need not be read
        return watch.sites().stream().anyMatch(site -> site.isPast(now))
                ? LateRound.at(now, watch.sites(), openAt(watch.day()))
                : List.of();
    }

    private Map<UUID, Long> openAt(LocalDate day) {
        return rounds.whole(day).stops().stream()
                .flatMap(DutyNews::openSites)
                .collect(Collectors.groupingBy(site -> site, Collectors.counting()));
    }

    private static Stream<UUID> openSites(Round.Stop stop) {
        return stop.items().stream()
                .filter(item -> !item.isDone())
                .map(Round.Item::address)
                .filter(Objects::nonNull)
                .map(PlaceAddress::siteId);
    }
}
