package warmshelf.placing;

import static warmshelf.placing.PlacingSentences.SAY;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.CandidatePlace;
import warmshelf.allocation.Slot;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** Reads where a coordinator wants a stay to lie instead. What is left out stays as it is. */
final class MoveForm {
    private static final int FARTHEST_DAYS = 366;
    private static final Pattern BOARD = Pattern.compile("/(racks|weeks)(\\?[A-Za-z0-9=&-]{0,200})?");

    private final FormReader reader;
    private final LyingStay lying;
    private final LocalDate today;
    private final Units units;

    MoveForm(Map<String, List<String>> typed, LyingStay lying, LocalDate today, Units units) {
        this.reader = new FormReader(typed);
        this.lying = lying;
        this.today = today;
        this.units = units;
    }

    FormReader reader() {
        return reader;
    }

    /** A wish with its place. */
    record Wish(StayMove move, CandidatePlace place) {}

    /** The wish; empty when something typed cannot be taken. */
    Optional<Wish> wish(List<CandidatePlace> places) {
        String key = reader.text("spot").isEmpty() ? key(lying) : reader.text("spot");
        Optional<CandidatePlace> place =
                places.stream().filter(each -> key.startsWith(each.id() + "/")).findFirst();
        Optional<Slot> slot = Slot.of(lying.stay().slot().quarters()).stream()
                .filter(each -> key.endsWith("/" + each.firstQuarter()))
                .findFirst();
        if (place.isEmpty()
                || slot.isEmpty()
                || key.length() != place.get().id().toString().length() + 2) {
            reader.refuse("spot", SAY.placeUnfit());
        }
        LocalDate from = from();
        Double celsius = celsius();
        int version = reader.optionalWholeNumber("version", "The version", 1, Integer.MAX_VALUE)
                .orElse(lying.stay().version());
        if (!reader.ok() || place.isEmpty() || slot.isEmpty()) {
            return Optional.empty();
        }
        UUID stay = lying.stay().id();
        return Optional.of(
                new Wish(new StayMove(stay, version, place.get().id(), slot.get(), from, celsius), place.get()));
    }

    private LocalDate from() {
        if (reader.text("from").isEmpty()) {
            return lying.firstDayFrom(today);
        }
        LocalDate from = reader.date("from", SAY.firstDayField());
        boolean asItIs = from.equals(lying.stay().from()) && lying.isBegunBy(today);
        if (!reader.problems().containsKey("from") && from.isBefore(today) && !asItIs) {
            reader.refuse("from", SAY.firstDayPassed(from, today));
        } else if (from.isAfter(today.plusDays(FARTHEST_DAYS))) {
            reader.refuse("from", SAY.firstDayTooFar(from, today, today.plusDays(FARTHEST_DAYS)));
        }
        return from;
    }

    private @Nullable Double celsius() {
        return reader.text("celsius").isEmpty() || !lying.stay().isOnMat() ? null : SetPointForm.celsius(reader, units);
    }

    /** Whether a move would come to what the form says it was shown; a form that says nothing takes what comes. */
    boolean isAsShown(MoveOutlook outlook) {
        String shown = reader.text("shown");
        return shown.isEmpty() || shown.equals(outlook.key());
    }

    /** The board to go back to afterwards; anything else leads to the stay's own page. */
    Optional<String> back() {
        return back(reader.text("back"));
    }

    static Optional<String> back(String address) {
        return Optional.of(address).filter(text -> BOARD.matcher(text).matches());
    }

    /** What a form sends to name where something lies. */
    static String key(LyingStay lying) {
        return key(lying.stay().placeId(), lying.stay().slot());
    }

    static String key(UUID place, Slot slot) {
        return place + "/" + slot.firstQuarter();
    }
}
