package warmshelf.label;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Stay;
import warmshelf.seed.Lot;
import warmshelf.sowing.History;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStores;
import warmshelf.timeline.Step;
import warmshelf.timeline.TimelineStep;

/** Finds what is to be labelled, and what each label can say. */
final class LabelSource {
    /** What is sown within so many days is labelled now: one writes the label first. */
    private static final int DAYS_AHEAD = 2;

    private final SowingStores stores;
    private final CodeStore codes;
    private final LabelRunStore runs;

    LabelSource(SowingStores stores, CodeStore codes, LabelRunStore runs) {
        this.stores = stores;
        this.codes = codes;
        this.runs = runs;
    }

    /**
     * What of a scope wants a label, in the order of asking.
     *
     * @param again whether what has its label comes too, and what is not sown for days
     */
    List<LabelItem> of(LabelScope scope, UUID visitor, boolean again, LocalDate today) {
        if (scope.kind() == LabelScope.Kind.PLACES) {
            return codes.standing().stream().map(LabelSource::place).toList();
        }
        List<History> underWay = stores.histories().underWay();
        boolean one = scope.isOfOneSowing();
        Map<UUID, UUID> sites = scope.kind() == LabelScope.Kind.SITE ? codes.sitesOfPlaces() : Map.of();
        List<History> chosen = underWay.stream()
                .filter(history -> isOf(history, scope, visitor, sites, today))
                .filter(history -> one || again || isSownSoon(history, today))
                .sorted((a, b) ->
                        a.sowing().title().compareToIgnoreCase(b.sowing().title()))
                .toList();
        return items(chosen, underWay).stream()
                .filter(item -> again || one || !item.labelled())
                .toList();
    }

    /** What a run was for, as it stands now; what is not there any more is left out. */
    List<LabelItem> of(LabelRun run) {
        Map<UUID, LabelItem> places = codes.standing().stream()
                .collect(Collectors.toMap(CodeStore.Subject::id, LabelSource::place, (first, second) -> first));
        Map<UUID, History> histories = stores.histories().all(run.subjects());
        Wording wording = wording(histories.values(), stores.histories().underWay());
        List<LabelItem> items = new ArrayList<>();
        for (LabelRun.Line line : run.lines()) {
            Optional<LabelItem> item = line.kind() == CodeStore.Kind.SOWING
                    ? Optional.ofNullable(histories.get(line.subject()))
                            .map(history -> wording.item(history, line.purpose(), Set.of(line.purpose())))
                    : Optional.ofNullable(places.get(line.subject()));
            item.map(found -> found.times(line.copies())).ifPresent(items::add);
        }
        return items;
    }

    private static boolean isOf(
            History history, LabelScope scope, UUID visitor, Map<UUID, UUID> sites, LocalDate today) {
        Sowing sowing = history.sowing();
        return switch (scope.kind()) {
            case MINE -> sowing.grower().memberId().equals(visitor);
            case SOWING -> sowing.id().equals(scope.id());
            case SITE -> {
                Stay stay = history.stayOn(today);
                yield stay != null && Objects.equals(scope.id(), sites.get(stay.placeId()));
            }
            case ALL, PLACES -> true;
        };
    }

    private boolean isSownSoon(History history, LocalDate today) {
        return !history.sowing().stage().isBeforeSowing()
                || sowingDay(history, today)
                        .filter(day -> !day.isAfter(today.plusDays(DAYS_AHEAD)))
                        .isPresent();
    }

    /** The day of its stay, or without warmth the one that suits; empty while it waits for a place. */
    private Optional<LocalDate> sowingDay(History history, LocalDate today) {
        Sowing sowing = history.sowing();
        Stay stay = history.stayOn(today);
        if (stay != null) {
            return Optional.of(stay.from());
        }
        if (sowing.warm()) {
            return Optional.empty();
        }
        if (sowing.trial() != null) {
            return Optional.of(sowing.trial().sowOn());
        }
        return stores.planner()
                .timeline(sowing, history.progress(), history.celsius(stores.planner()), today)
                .flatMap(timeline -> timeline.step(Step.SOW))
                .map(TimelineStep::ideal);
    }

    private List<LabelItem> items(List<History> chosen, List<History> underWay) {
        Map<UUID, Set<LabelPurpose>> labelled = runs.labelled();
        Wording wording = wording(chosen, underWay);
        List<LabelItem> items = new ArrayList<>();
        for (History history : chosen) {
            for (LabelPurpose purpose : LabelPurpose.wantedBy(history.sowing(), history.progress())) {
                items.add(wording.item(
                        history, purpose, labelled.getOrDefault(history.sowing().id(), Set.of())));
            }
        }
        return items;
    }

    private Wording wording(Collection<History> chosen, List<History> underWay) {
        List<UUID> lots = chosen.stream()
                .map(history -> history.sowing().lotId())
                .distinct()
                .toList();
        Map<UUID, Lot> byId = stores.lots().all(lots).stream().collect(Collectors.toMap(Lot::id, Function.identity()));
        List<String> varieties = underWay.stream()
                .map(history -> history.sowing().variety())
                .filter(variety -> !variety.isEmpty())
                .distinct()
                .toList();
        return new Wording(new LabelWording(varieties), byId);
    }

    private record Wording(LabelWording words, Map<UUID, Lot> lots) {
        LabelItem item(History history, LabelPurpose purpose, Set<LabelPurpose> labelled) {
            Sowing sowing = history.sowing();
            Progress progress = history.progress();
            Lot lot = lots.get(sowing.lotId());
            @Nullable
            LocalDate planned =
                    history.stays().isEmpty() ? null : history.stays().get(0).from();
            return new LabelItem(
                    new CodeStore.Subject(
                            CodeStore.Kind.SOWING,
                            sowing.id(),
                            sowing.title(),
                            sowing.grower().name()),
                    purpose,
                    purpose.copies(sowing, progress),
                    labelled.contains(purpose),
                    words.of(sowing, progress.seen(), purpose, lot == null ? null : lot.seedYear(), planned));
        }
    }

    private static LabelItem place(CodeStore.Subject subject) {
        return new LabelItem(
                subject, LabelPurpose.PLACE, 1, false, LabelWording.ofPlace(subject.title(), subject.where()));
    }

    /** The same with the codes they have, and without making any: what has none yet stands there with the widest there can be. */
    List<LabelSet.Coded> withKnownCodes(List<LabelItem> items) {
        Map<UUID, ShortCode> known =
                codes.known(items.stream().map(item -> item.subject().id()).toList());
        return items.stream()
                .map(item -> new LabelSet.Coded(
                        item, known.getOrDefault(item.subject().id(), ShortCode.WIDEST)))
                .toList();
    }

    /** The labels' codes; what has none yet gets its own. */
    List<LabelSet.Coded> coded(List<LabelItem> items, UUID by) {
        List<ShortCode> made =
                codes.codesOf(items.stream().map(LabelItem::subject).toList(), by);
        List<LabelSet.Coded> coded = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            coded.add(new LabelSet.Coded(items.get(i), made.get(i)));
        }
        return coded;
    }

    List<CodeStore.SiteName> sites() {
        return codes.sites();
    }
}
