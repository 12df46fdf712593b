package warmshelf.privacy;

import static warmshelf.privacy.PrivacySentences.SAY;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import warmshelf.group.Member;
import warmshelf.words.FormReader;

/** That somebody is to be erased, confirmed so that it cannot happen by a slip. */
final class ErasureForm {
    private static final int LONGEST = 200;

    private final FormReader reader;

    ErasureForm(Map<String, List<String>> typed) {
        this.reader = new FormReader(typed);
    }

    FormReader reader() {
        return reader;
    }

    /**
     * How the person is to be erased; empty, with the reasons in the reader, where it is not confirmed.
     *
     * @param confirms whether what was typed is what confirms it
     * @param successors who can coordinate from then on; empty where nobody has to be named
     */
    Optional<ErasureWish> wish(Member member, Predicate<String> confirms, List<Member> successors) {
        String typed = reader.requiredText("confirmation", SAY.confirmationField(), LONGEST);
        if (reader.ok() && !confirms.test(typed)) {
            reader.refuse("confirmation", SAY.notConfirmed(member.name()));
        }
        UUID successor = successors.isEmpty() ? null : successor(successors);
        return reader.ok() ? Optional.of(new ErasureWish(reader.ticked("photos"), successor)) : Optional.empty();
    }

    private @Nullable UUID successor(List<Member> successors) {
        String chosen = reader.text("successor");
        Optional<UUID> found = successors.stream()
                .map(Member::id)
                .filter(id -> id.toString().equals(chosen))
                .findFirst();
        if (found.isEmpty()) {
            reader.refuse("successor", SAY.chooseSuccessor());
        }
        return found.orElse(null);
    }
}
