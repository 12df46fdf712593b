package warmshelf;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import warmshelf.handbook.CommandWords;
import warmshelf.handbook.CommandWords.OptionWords;
import warmshelf.handbook.ProgramWords;

/** What {@code --help} says of each command, for the handbook: both come from the same descriptions. */
final class CommandBook {
    private CommandBook() {}

    static ProgramWords words() {
        CommandLine program = App.line();
        return new ProgramWords(
                footer(program.getCommandSpec()),
                program.getSubcommands().values().stream()
                        .map(CommandBook::words)
                        .sorted(Comparator.comparing(CommandWords::name))
                        .toList());
    }

    private static CommandWords words(CommandLine line) {
        CommandSpec spec = line.getCommandSpec();
        String program = spec.root().name() + " ";
        String synopsis = new Help(spec, Help.defaultColorScheme(Help.Ansi.OFF)).synopsis(0);
        return new CommandWords(
                spec.name(),
                joined(synopsis).substring(program.length()).replace(" [-hV]", ""),
                joined(spec.usageMessage().description()),
                Stream.concat(
                                spec.positionalParameters().stream().map(CommandBook::words),
                                spec.options().stream()
                                        .filter(option -> !option.usageHelp() && !option.versionHelp())
                                        .map(CommandBook::words))
                        .toList(),
                footer(spec));
    }

    private static List<String> footer(CommandSpec spec) {
        return Arrays.stream(spec.usageMessage().footer())
                .map(CommandBook::joined)
                .toList();
    }

    private static OptionWords words(PositionalParamSpec word) {
        return new OptionWords(word.paramLabel(), about(word));
    }

    private static OptionWords words(OptionSpec option) {
        return new OptionWords(option.longestName() + "=" + option.paramLabel(), about(option));
    }

    private static String about(ArgSpec argument) {
        return joined(argument.description());
    }

    /** On one line, with the percent signs that descriptions double. */
    private static String joined(String... lines) {
        return String.join(" ", lines)
                .replaceAll("\\s+", " ")
                .replace("%%", "%")
                .strip();
    }
}
