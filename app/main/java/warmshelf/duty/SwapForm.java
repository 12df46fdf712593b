package warmshelf.duty;

import static warmshelf.duty.DutySentences.SAY;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.words.FormReader;

/** Whom somebody asks to take a day, and for which day in exchange. */
final class SwapForm {
    private static final int SHOWN = 40;

    private SwapForm() {}

    /** What is asked; the meanings are those of {@link Swap}. */
    record Asking(@Nullable UUID askedOf, @Nullable Turn inReturn) {}

    static Optional<Asking> read(FormReader form, List<Named> members) {
        String whom = form.text("whom");
        UUID askedOf = members.stream()
                .map(Named::id)
                .filter(id -> id.toString().equals(whom))
                .findFirst()
                .orElse(null);
        if (askedOf == null && !whom.equals("anyone")) {
            form.refuse("whom", SAY.noSuchPerson(shown(whom)));
        }
        Turn inReturn = inReturn(form);
        return form.ok() ? Optional.of(new Asking(askedOf, inReturn)) : Optional.empty();
    }

    private static @Nullable Turn inReturn(FormReader form) {
        String text = form.text("inReturn");
        if (text.isEmpty() || text.equals("none")) {
            return null;
        }
        try {
            return Turn.parse(text);
        } catch (IllegalArgumentException malformed) {
            form.refuse("inReturn", SAY.noSuchReturn(shown(text)));
            return null;
        }
    }

    private static String shown(String text) {
        return text.length() > SHOWN ? "…" : text;
    }
}
