package warmshelf.check;

import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import warmshelf.sowing.SowingStage;
import warmshelf.words.Message;
import warmshelf.words.Units;

/** What a tick that can be taken came to. */
public sealed interface TickOutcome {
    /**
     * Kept.
     *
     * @param again the same tick had been kept before; nothing was added
     * @param remarks what the person should know about the space
     */
    record Kept(SowingStage stage, boolean again, List<Message> remarks) implements TickOutcome {
        String remark(Units units) {
            return remarks.stream().map(each -> each.words(units)).collect(Collectors.joining(" "));
        }
    }

    /**
     * A look that says nothing beyond one that the same person entered for that day already; nothing was added.
     *
     * @param entry the one that stands for it
     */
    record Repeated(UUID entry) implements TickOutcome {}
}
