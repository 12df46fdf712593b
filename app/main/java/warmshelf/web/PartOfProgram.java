package warmshelf.web;

import java.util.Arrays;
import java.util.List;

/** The parts in which pages stand together in the navigation. */
public enum PartOfProgram {
    TODAY("/today", "/code"),
    MINE("/sowings", "/frost", "/reminders", "/harvest", "/trials", "/plans/fairness"),
    ASK("/ask"),
    RACKS("/racks", "/weeks", "/stays", "/labels"),
    SEED("/seeds", "/crops", "/new-crop", "/packets", "/supplies", "/surplus"),
    REQUESTS("/requests"),
    PLAN("/plans"),
    GROUP(
            "/duty",
            "/people",
            "/sites",
            "/settings",
            "/findings",
            "/season",
            "/files",
            "/tokens",
            "/tablets",
            "/paper",
            "/archive",
            "/how-to",
            "/help",
            "/numbers",
            "/privacy",
            "/handbook"),
    /** What stands alone, such as signing in. */
    NONE;

    private final List<String> begins;

    PartOfProgram(String... begins) {
        this.begins = List.of(begins);
    }

    /** The part to which the page of a path belongs. */
    public static PartOfProgram of(String path) {
        return Arrays.stream(values())
                .filter(part -> part.begins.stream()
                        .anyMatch(address -> path.equals(address) || path.startsWith(address + "/")))
                .findFirst()
                .orElse(NONE);
    }
}
