package warmshelf.handbook;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A page of the handbook, in the order in which it is read. */
public enum Chapter {
    FIRST_EVENING("first-evening", "The first evening", "From the first start to the first request."),
    PHONES("phones", "Phones and https", "The address that phones can open, and a cellar without signal."),
    MAIL("mail", "Letters", "Reminders by mail: what they need."),
    NOTICES("notices", "Notices on phones", "The same as short notices, and what they need."),
    BACKUP("backup", "Backup and upgrades", "What to copy, how to bring it back, and a newer program."),
    MOVING("moving", "Moving to another machine", "Another laptop or server, or PostgreSQL."),
    OPTIONS("options", "Options", "Everything that can be set when the server starts."),
    FROST("frost", "Where frost dates come from", "What comes with the program, and what your group can bring in."),
    TOUR("tour", "What is where", "Each page and what it does."),
    COMMANDS("commands", "Commands", "What can be asked on the command line, and what is printed."),
    LIMITS("limits", "What it does not do", "Limits, and what each release brought."),
    DATA("data", "The data", "Each table and column of the database.");

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
