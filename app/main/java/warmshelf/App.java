package warmshelf;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import warmshelf.archive.ExportCommand;
import warmshelf.archive.ImportCommand;
import warmshelf.archive.MoveCommand;
import warmshelf.backup.BackupCommand;
import warmshelf.backup.CheckCommand;
import warmshelf.backup.RestoreCommand;
import warmshelf.check.TodayCommand;
import warmshelf.crop.EmergeCommand;
import warmshelf.demo.DemoCommand;
import warmshelf.demo.RehearseCommand;
import warmshelf.finding.FindingsCommand;
import warmshelf.frost.FrostCheckCommand;
import warmshelf.frost.FrostCommand;
import warmshelf.frost.FrostSurfaceCommand;
import warmshelf.plan.engine.PlanCheckCommand;
import warmshelf.plan.engine.PlanCommand;
import warmshelf.reminder.push.PushKeysCommand;
import warmshelf.seed.SowCommand;
import warmshelf.seed.ViabilityCommand;
import warmshelf.sowing.ResultsCommand;
import warmshelf.timeline.TimelineCommand;

/** The command line: what {@code java -jar warmshelf.jar} does. */
@Command(
        name = "warmshelf",
        description = "Shared heat mats, lit shelves and daily looks for a seed-starting group.",
        footerHeading = "%n",
        footer = {
            "Each command but serve and demo prints one JSON object on standard output. Trouble goes to standard error as a"
                    + " sentence: exit status 2 for what cannot be used, 1 for a fault.",
            "Dates are 2027-05-20, temperatures Celsius, chances 0 to 1. CROP is a word such as pepper, tomato or lettuce;"
                    + " db/reference/crops.csv lists them all."
        },
        mixinStandardHelpOptions = true,
        subcommands = {
            BackupCommand.class,
            CheckCommand.class,
            DemoCommand.class,
            ExportCommand.class,
            FindingsCommand.class,
            FrostCheckCommand.class,
            FrostCommand.class,
            FrostSurfaceCommand.class,
            ImportCommand.class,
            MoveCommand.class,
            PlanCheckCommand.class,
            PlanCommand.class,
            PushKeysCommand.class,
            RehearseCommand.class,
            RestoreCommand.class,
            ResultsCommand.class,
            ServeCommand.class,
            SowCommand.class,
            TimelineCommand.class,
            TodayCommand.class,
            ViabilityCommand.class
        })
public final class App {
    private App() {}

    public static void main(String[] arguments) {
        System.exit(run(arguments));
    }

    /** Runs one command. Status 0: done; 2: what was given cannot be used; 1: a fault of ours. */
    public static int run(String... arguments) {
        CommandLine line = line();
        line.setParameterExceptionHandler(CommandTrouble::wrongArguments);
        line.setExecutionExceptionHandler(CommandTrouble::failed);
        return line.execute(arguments);
    }

    /** Every command with its options. */
    static CommandLine line() {
        // so that a temperature below zero is not taken for an unknown option; a real one is refused as a surplus word
        CommandLine emerge = new CommandLine(new EmergeCommand()).setUnmatchedOptionsArePositionalParams(true);
        return new CommandLine(new App()).addSubcommand(emerge);
    }
}
