package warmshelf.tablet;

import static warmshelf.tablet.TabletSentences.SAY;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** Reads what a new tablet is called and where it stands. */
final class TabletForm {
    static final int LONGEST_NAME = 40;

    private final FormReader reader;
    private final List<Choice> sites;

    TabletForm(Map<String, List<String>> typed, List<Choice> sites) {
        this.reader = new FormReader(typed);
        this.sites = sites;
    }

    FormReader reader() {
        return reader;
    }

    /** @param site whose round it shows */
    record Wanted(String name, UUID site) {}

    /** The tablet that is wanted; empty when something typed cannot be taken. */
    Optional<Wanted> wanted() {
        String name = reader.requiredText("name", SAY.nameField(), LONGEST_NAME);
        if (sites.isEmpty()) {
            reader.refuse("site", SAY.noSites());
            return Optional.empty();
        }
        String site = reader.choice(
                "site", SAY.siteField(), sites.stream().map(Choice::value).toList());
        return reader.ok() ? Optional.of(new Wanted(name, UUID.fromString(site))) : Optional.empty();
    }
}
