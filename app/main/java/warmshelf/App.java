package warmshelf;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line: what {@code java -jar warmshelf.jar} does. */
@Command(
        name = "warmshelf",
        description = "Shared heat mats, lit shelves and daily looks for a seed-starting group.",
        mixinStandardHelpOptions = true,
        subcommands = {ServeCommand.class})
public final class App {
    private App() {}

    public static void main(String[] arguments) {
        System.exit(run(arguments));
    }

    /** Runs one command. Status 0: done; 2: what was given cannot be used; 1: a fault of ours. */
    public static int run(String... arguments) {
        CommandLine line = new CommandLine(new App());
        line.setParameterExceptionHandler(CommandTrouble::wrongArguments);
        line.setExecutionExceptionHandler(CommandTrouble::failed);
        return line.execute(arguments);
    }
}
