package warmshelf.handbook;

import static warmshelf.handbook.HandbookSentences.SAY;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A page of the handbook, in the order in which it is read. */
public enum Chapter {
    FIRST_EVENING("first-evening", SAY.firstEvening(), SAY.firstEveningAbout()),
    PHONES("phones", SAY.phones(), SAY.phonesAbout()),
    MAIL("mail", SAY.mail(), SAY.mailAbout()),
    NOTICES("notices", SAY.notices(), SAY.noticesAbout()),
    BACKUP("backup", SAY.backup(), SAY.backupAbout()),
    MOVING("moving", SAY.moving(), SAY.movingAbout()),
    SERVERS("servers", SAY.servers(), SAY.serversAbout()),
    SECURITY("security", SAY.security(), SAY.securityAbout()),
    OPTIONS("options", SAY.options(), SAY.optionsAbout()),
    FROST("frost", SAY.frost(), SAY.frostAbout()),
    TOUR("tour", SAY.tour(), SAY.tourAbout()),
    COMMANDS("commands", SAY.commands(), SAY.commandsAbout()),
    PROGRAMS("programs", SAY.programs(), SAY.programsAbout()),
    LIMITS("limits", SAY.limits(), SAY.limitsAbout()),
    DATA("data", SAY.data(), SAY.dataAbout());

    private final String word;
    private final String title;
    private final String about;

    Chapter(String word, String title, String about) {
        this.word = word;
        this.title = title;
        this.about = about;
    }

    /** Its place in the address, and the name of its template. */
    public String word() {
        return word;
    }

    public String title() {
        return title;
    }

    /** What it tells, in a line. */
    public String about() {
        return about;
    }

    String template() {
        return "handbook/en/" + word + ".peb";
    }

    static List<Chapter> all() {
        return List.of(values());
    }

    static Optional<Chapter> named(String word) {
        return Arrays.stream(values())
                .filter(chapter -> chapter.word.equals(word))
                .findFirst();
    }

    /** The one to read after it. */
    Optional<Chapter> next() {
        List<Chapter> all = List.of(values());
        int next = all.indexOf(this) + 1;
        return next < all.size() ? Optional.of(all.get(next)) : Optional.empty();
    }
}
