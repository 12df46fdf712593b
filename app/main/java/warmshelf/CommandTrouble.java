package warmshelf;

import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Turns trouble in a command into one sentence on standard error and an exit status; never a stack trace. */
final class CommandTrouble {
    private CommandTrouble() {}

    static int wrongArguments(ParameterException wrong, String[] arguments) {
        CommandLine line = wrong.getCommandLine();
        line.getErr()
                .println(sentence(reason(wrong)) + " See '"
                        + line.getCommandSpec().qualifiedName() + " --help'.");
        return CommandLine.ExitCode.USAGE;
    }

    static int failed(Exception trouble, CommandLine line, ParseResult parsed) {
        if (trouble instanceof BadInput) {
            line.getErr().println(trouble.getMessage());
            return CommandLine.ExitCode.USAGE;
        }
        line.getErr()
                .println(sentence("This failed through a fault of the program or the machine: " + reason(trouble)));
        return CommandLine.ExitCode.SOFTWARE;
    }

    private static String reason(Exception trouble) {
        String message = trouble.getMessage();
        return message == null ? trouble.getClass().getSimpleName() : message;
    }

    private static String sentence(String words) {
        String line = words.replaceAll("\\s*\\R\\s*", "; ").strip();
        return line.endsWith(".") ? line : line + ".";
    }
}
