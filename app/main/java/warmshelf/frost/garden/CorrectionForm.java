package warmshelf.frost.garden;

import static warmshelf.frost.garden.GardenSentences.SAY;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.garden.FrostCorrection.Area;
import warmshelf.frost.garden.FrostCorrection.Change;
import warmshelf.words.Countries;
import warmshelf.words.FormReader;

/** A correction as it is typed in, for one's own garden or for an area of postcodes. */
public final class CorrectionForm {
    private static final int SHORTEST_REASON = 5;
    private static final int LONGEST_REASON = 300;

    private final FormReader reader;
    private final @Nullable Correction correction;

    private CorrectionForm(FormReader reader, @Nullable Correction correction) {
        this.reader = reader;
        this.correction = correction;
    }

    /** What was typed, where all of it can be used. */
    record Correction(Area area, Change change, String reason) {}

    static CorrectionForm blank(String country) {
        return new CorrectionForm(
                new FormReader(Map.of(
                        "how", List.of("shift"),
                        "springWay", List.of("later"),
                        "autumnWay", List.of("earlier"),
                        "country", List.of(country))),
                null);
    }

    static CorrectionForm ofGarden(Map<String, List<String>> typed, Area.Garden garden) {
        return of(new FormReader(typed), garden);
    }

    static CorrectionForm ofArea(Map<String, List<String>> typed) {
        FormReader reader = new FormReader(typed);
        String country = reader.text("country");
        if (!Countries.codes().contains(country)) {
            reader.refuse("country", SAY.noCountry());
        }
        String given = reader.requiredText("start", SAY.beginning(), 40);
        String start = Corrections.plain(given);
        if (!start.matches("[A-Z0-9]{2,12}")) {
            reader.refuse("start", SAY.noBeginning(given.length() > 40 ? given.substring(0, 40) + "…" : given));
        }
        return of(reader, new Area.Postcodes(country, start));
    }

    private static CorrectionForm of(FormReader reader, Area area) {
        Change change = ChangeFields.read(reader);
        String reason = reader.requiredText("reason", SAY.reason(), LONGEST_REASON);
        if (reason.length() < SHORTEST_REASON) {
            reader.refuse("reason", SAY.reasonTooShort(reason, SHORTEST_REASON, LONGEST_REASON));
        }
        return new CorrectionForm(reader, reader.ok() ? new Correction(area, change, reason) : null);
    }

    Optional<Correction> correction() {
        return Optional.ofNullable(correction);
    }

    public Map<String, String> typed() {
        return reader.typed();
    }

    public Map<String, String> problems() {
        return reader.problems();
    }
}
