package warmshelf.leaving;

import static warmshelf.leaving.LeavingSentences.SAY;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.group.Member;
import warmshelf.words.FormReader;

/** What is to become of all that a member leaves, as it was chosen. */
final class LeavingForm {
    static final String RECEIVER = "receiver";

    private final FormReader reader;

    LeavingForm(Map<String, List<String>> typed) {
        this.reader = new FormReader(typed);
    }

    /** The form as it is first shown: what usually becomes of each, and a receiver. */
    static LeavingForm proposed(List<LeftThing> things, @Nullable UUID receiver) {
        Map<String, List<String>> typed = new LinkedHashMap<>();
        things.forEach(thing ->
                typed.put(thing.field(), List.of(thing.kind().fates().get(0).word())));
        typed.put(RECEIVER, List.of(receiver == null ? "" : receiver.toString()));
        return new LeavingForm(typed);
    }

    FormReader reader() {
        return reader;
    }

    /**
     * Who takes over and what becomes of each thing.
     *
     * @param receiver null where nothing is handed over
     */
    record Decided(Map<LeftThing, Fate> fates, @Nullable UUID receiver) {}

    /** The decisions on these things; empty, with the reasons in the reader, where one is missing or cannot be. */
    Optional<Decided> decided(List<LeftThing> things, List<Member> others) {
        Map<LeftThing, Fate> fates = new LinkedHashMap<>();
        for (LeftThing thing : things) {
            fate(thing).ifPresent(fate -> fates.put(thing, fate));
        }
        UUID receiver = fates.containsValue(Fate.HANDED_OVER) ? receiver(others) : null;
        return reader.ok() ? Optional.of(new Decided(fates, receiver)) : Optional.empty();
    }

    private Optional<Fate> fate(LeftThing thing) {
        Optional<Fate> fate =
                Fate.named(reader.text(thing.field())).filter(thing.kind().fates()::contains);
        if (fate.isEmpty()) {
            reader.refuse(thing.field(), SAY.chooseFate(thing.words()));
        }
        return fate;
    }

    private @Nullable UUID receiver(List<Member> others) {
        String chosen = reader.text(RECEIVER);
        Optional<UUID> found = others.stream()
                .map(Member::id)
                .filter(id -> id.toString().equals(chosen))
                .findFirst();
        if (found.isEmpty()) {
            reader.refuse(RECEIVER, SAY.chooseReceiver());
        }
        return found.orElse(null);
    }
}
