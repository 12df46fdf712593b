package warmshelf;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line: what {@code java -jar warmshelf.jar} does. */
@Command(
        name = "warmshelf",
        description = "Shared heat mats, lit shelves and daily looks for a seed-starting group.",
        mixinStandardHelpOptions = true)
public final class App {
    private App() {}

    public static void main(String[] arguments) {
        System.exit(new CommandLine(new App()).execute(arguments));
    }
}
