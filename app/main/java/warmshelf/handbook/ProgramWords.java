package warmshelf.handbook;

import java.util.List;

/**
 * The program as its own help tells it.
 *
 * @param general what holds for each command, a paragraph each
 * @param commands by name
 */
public record ProgramWords(List<String> general, List<CommandWords> commands) {
    private static final String SERVER = "serve";

    /** The command that runs the server: its options are the settings. */
    public CommandWords server() {
        return commands.stream()
                .filter(command -> command.name().equals(SERVER))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("there is no command '" + SERVER + "'"));
    }
}
