package warmshelf.placing;

import static warmshelf.placing.PlacingSentences.SAY;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Stay;
import warmshelf.shelf.AddressedSiteStore;
import warmshelf.web.Refusal;
import warmshelf.web.SiteRight;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.DayWords;
import warmshelf.words.FormReader;

/** The stay that an address names, and its page. */
final class StayView {
    private final LyingStore lying;
    private final MoveStore moves;
    private final MoveReader reader;
    private final AddressedSiteStore sites;

    StayView(LyingStore lying, MoveStore moves, MoveReader reader, AddressedSiteStore sites) {
        this.sites = sites;
        this.lying = lying;
        this.moves = moves;
        this.reader = reader;
    }

    LyingStay stay(UUID id, Visitor visitor) {
        return lying.find(id).orElseThrow(() -> gone(id, visitor));
    }

    private Refusal gone(UUID id, Visitor visitor) {
        return moves.knows(id) ? Refusal.conflict(moves.whatChanged(id, 0).words(visitor.units())) : Refusal.notFound();
    }

    /** The same, of a stay that has not ended. */
    LyingStay movable(UUID id, Visitor visitor) {
        LyingStay stay = stay(id, visitor);
        if (stay.isOverBy(visitor.today())) {
            throw Refusal.conflict(SAY.endedOn(DayWords.day(stay.stay().to())));
        }
        return stay;
    }

    /** @throws Refusal when a place is at a site on which they may not decide */
    void refuseElsewhere(UUID place, Visitor visitor) {
        SiteRight.require(visitor, sites.ofPlace(place));
    }

    /** @param back where to go on after a change, as the address says; null: as the form says */
    StayPage page(Visitor visitor, LyingStay stay, FormReader form, FormReader freeing, @Nullable String back) {
        LocalDate today = visitor.today();
        boolean over = stay.isOverBy(today);
        boolean mayMove =
                !over && visitor.reach().coversAll(sites.ofPlace(stay.stay().placeId()));
        return new StayPage(
                stay,
                stay.stay(),
                over,
                over ? moves.goesOnAs(stay.stay().id()).orElse(null) : null,
                mayMove,
                stay.isBegunBy(today),
                mayMove && moves.mayTakeBack(stay, today, visitor.memberId()),
                mayMove ? reader.choices(stay, today, visitor.reach()) : List.of(),
                form.text("spot").isEmpty() ? MoveForm.key(stay) : form.text("spot"),
                steps(stay, MoveForm.key(stay), stay.stay().from(), today, form.text("back")),
                form,
                freeing,
                MoveForm.back(back == null ? form.text("back") : back).orElse(""));
    }

    /** Moves by a day or a week as links: the address, and the words. */
    static List<Choice> steps(LyingStay stay, String spot, LocalDate from, LocalDate today, String back) {
        List<Choice> steps = new ArrayList<>();
        if (stay.isBegunBy(today)) {
            return steps;
        }
        addStep(steps, stay.stay(), spot, from.minusWeeks(1), SAY.weekEarlier(), today, back);
        addStep(steps, stay.stay(), spot, from.minusDays(1), SAY.dayEarlier(), today, back);
        addStep(steps, stay.stay(), spot, from.plusDays(1), SAY.dayLater(), today, back);
        addStep(steps, stay.stay(), spot, from.plusWeeks(1), SAY.weekLater(), today, back);
        return steps;
    }

    private static void addStep(
            List<Choice> steps, Stay stay, String spot, LocalDate from, String words, LocalDate today, String back) {
        if (!from.isBefore(today)) {
            String kept = MoveForm.back(back)
                    .map(address -> "&back=" + URLEncoder.encode(address, StandardCharsets.UTF_8))
                    .orElse("");
            steps.add(new Choice("/stays/%s/move?spot=%s&from=%s%s".formatted(stay.id(), spot, from, kept), words));
        }
    }
}
