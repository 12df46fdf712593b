package warmshelf.exchange;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A table that can be taken out, with its columns. */
public enum OutgoingTable {
    LOTS(
            "lots",
            "id",
            "crop",
            "variety",
            "year",
            "seeds_left",
            "owner",
            "treated",
            "source",
            "storage",
            "storage_celsius",
            "storage_moisture_percent",
            "tests",
            "note",
            "offered",
            "kept_back",
            "without_asking",
            "added_on"),
    SEED_PASSPORTS("lots-mcpd", SeedPassport.DESCRIPTORS.toArray(String[]::new)),
    SOWINGS(
            "sowings",
            "sowing",
            "season",
            "season_part",
            "grower",
            "crop",
            "variety",
            "lot",
            "method",
            "warm",
            "container",
            "quarters",
            "plants_wanted",
            "seeds",
            "seeds_per_cell",
            "cells",
            "cells_in_tray",
            "stage",
            "under_cover_on",
            "asked_on",
            "note"),
    ENTRIES(
            "entries",
            "entry",
            "sowing",
            "mat",
            "step",
            "seen_on",
            "so_far",
            "moved",
            "lost",
            "finished",
            "celsius",
            "problem",
            "note",
            "corrects",
            "by"),
    STAYS(
            "stays",
            "stay",
            "sowing",
            "site",
            "rack",
            "shelf",
            "mat",
            "place",
            "first_quarter",
            "quarters",
            "from",
            "leaves_on"),
    NIGHTS("nights", "thermometer", "day", "celsius", "by"),
    MEMBERS("members", "name", "role", "joined_on", "left_on", "country", "postcode");

    private final String word;
    private final List<String> columns;

    OutgoingTable(String word, String... columns) {
        this.word = word;
        this.columns = List.of(columns);
    }

    /** The word in its address and its file's name. */
    public String word() {
        return word;
    }

    public List<String> columns() {
        return columns;
    }

    static Optional<OutgoingTable> named(String word) {
        return Arrays.stream(values()).filter(table -> table.word.equals(word)).findFirst();
    }
}
