package org.proviso.cli;

import java.util.Arrays;
import java.util.Set;
import org.proviso.files.InputException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;

/** The file verbs: each does its job on files and ends. Without a verb the program starts the office's server. */
@Command(
        name = "proviso",
        description = "Settles provisional ballots from the shell. Without a verb, starts the office's server.",
        mixinStandardHelpOptions = true,
        version = "Proviso 0.1.0",
        subcommands = {
            AdjudicateCommand.class,
            AssessCommand.class,
            DeadlinesCommand.class,
            CheckRulesCommand.class,
            VerifyLedgerCommand.class,
            MatchCommand.class,
            MakeSampleCommand.class,
        })
public final class CommandLineApp {

    /** What bad input or a wrong option exits with. */
    private static final int BAD_INPUT = 2;

    private CommandLineApp() {}

    /** Whether these arguments are for the shell rather than for the server. */
    public static boolean isVerb(String[] arguments) {
        Set<String> verbs = commandLine().getSubcommands().keySet();
        return arguments.length > 0
                && (verbs.contains(arguments[0])
                        || Arrays.asList("--help", "-h", "--version", "-V").contains(arguments[0]));
    }

    /** Runs the verb and returns the exit code: 0 done, 1 the answer is no, 2 bad input. */
    public static int run(String[] arguments) {
        return commandLine().execute(arguments);
    }

    private static CommandLine commandLine() {
        return new CommandLine(new CommandLineApp())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler(CommandLineApp::wrongOption)
                .setExecutionExceptionHandler(CommandLineApp::failed);
    }

    private static int wrongOption(ParameterException exception, String[] arguments) {
        CommandLine verb = exception.getCommandLine();
        String name = verb.getCommandSpec().qualifiedName();
        verb.getErr().println(name + ": " + exception.getMessage() + " (see " + name + " --help)");
        return BAD_INPUT;
    }

    private static int failed(Exception exception, CommandLine verb, CommandLine.ParseResult arguments)
            throws Exception {
        if (!(exception instanceof InputException)) {
            throw exception;
        }
        verb.getErr().println(verb.getCommandSpec().qualifiedName() + ": " + exception.getMessage());
        return BAD_INPUT;
    }
}
