package warmshelf.program;

import static warmshelf.program.ProgramSentences.SAY;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import warmshelf.words.FormReader;

/** Reads what a new token is for and what its script may do. */
final class ProgramTokenForm {
    private static final int LONGEST_NAME = 60;

    private final FormReader reader;
    private final LocalDate today;

    ProgramTokenForm(Map<String, List<String>> typed, LocalDate today) {
        this.reader = new FormReader(typed);
        this.today = today;
    }

    FormReader reader() {
        return reader;
    }

    /** The token that is wanted; empty when something typed cannot be taken. */
    Optional<NewToken> token() {
        String name = reader.requiredText("name", SAY.nameField(), LONGEST_NAME);
        Set<TokenScope> scopes = EnumSet.noneOf(TokenScope.class);
        Arrays.stream(TokenScope.values())
                .filter(scope -> reader.ticked(scope.field()))
                .forEach(scopes::add);
        if (scopes.isEmpty()) {
            reader.refuse("scopes", SAY.nothingTicked());
        }
        @Nullable LocalDate endsOn = reader.text("endsOn").isEmpty() ? null : reader.date("endsOn", SAY.endsOnField());
        if (endsOn != null && reader.ok() && endsOn.isBefore(today)) {
            reader.refuse("endsOn", SAY.endsOnPast(endsOn.toString(), today.toString()));
        }
        return reader.ok() ? Optional.of(new NewToken(name, scopes, endsOn)) : Optional.empty();
    }
}
