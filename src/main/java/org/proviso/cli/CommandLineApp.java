package org.proviso.cli;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Set;
import org.proviso.files.InputException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * The verbs: each does its job and ends, on files, or on the office's database where it needs it. Without a verb the
 * program starts the office's server.
 */
@Command(
        name = "proviso",
        description =
                "Works on provisional ballots from the command line. Without a command, starts the office's server.",
        mixinStandardHelpOptions = true,
        version = "Proviso 0.1.0",
        subcommands = {
            AdjudicateCommand.class,
            AssessCommand.class,
            DeadlinesCommand.class,
            CheckRulesCommand.class,
            MeasureCommand.class,
            WhatIfCommand.class,
            VerifyLedgerCommand.class,
            MatchCommand.class,
            ProposeMappingCommand.class,
            ReplayCommand.class,
            ExportLedgerCommand.class,
            RebuildStatusCommand.class,
        })
public final class CommandLineApp {

    /** What bad input or a wrong option exits with. */
    private static final int BAD_INPUT = 2;

    private CommandLineApp() {}

    /** Whether these arguments are for the command line: the server takes options only, so any first word is a command. */
    public static boolean isVerb(String[] arguments) {
        return arguments.length > 0
                && (!arguments[0].startsWith("-")
                        || Set.of("--help", "-h", "--version", "-V").contains(arguments[0]));
    }

    /** Runs the command and returns the exit code: 0 done, 1 the answer is no, 2 bad input. */
    public static int run(String[] arguments) {
        return new CommandLine(new CommandLineApp())
                .setOut(utf8(System.out))
                .setErr(utf8(System.err))
                .registerConverter(LocalDate.class, CommandLineApp::date)
                .registerConverter(LocalDateTime.class, CommandLineApp::moment)
                .setParameterExceptionHandler(CommandLineApp::wrongOption)
                .setExecutionExceptionHandler(CommandLineApp::failed)
                .execute(arguments);
    }

    /** The outcome marks must come through whatever the shell's own encoding is. */
    private static PrintWriter utf8(PrintStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
    }

    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new TypeConversionException("\"" + text + "\" is not a date (write it as 2026-11-03)");
        }
    }

    private static LocalDateTime moment(String text) {
        try {
            return LocalDateTime.parse(text);
        } catch (DateTimeException e) {
            throw new TypeConversionException(
                    "\"" + text + "\" is not a local date and time (write it as 2026-11-04T12:00)");
        }
    }

    private static int wrongOption(ParameterException exception, String[] arguments) {
        CommandLine verb = exception.getCommandLine();
        String name = verb.getCommandSpec().qualifiedName();
        boolean noVerb = exception instanceof UnmatchedArgumentException && verb.getParent() == null;
        String message = noVerb ? "there is no command \"" + arguments[0] + "\"" : exception.getMessage();
        verb.getErr().println(name + ": " + message + " (see " + name + " --help)");
        return BAD_INPUT;
    }

    private static int failed(Exception exception, CommandLine verb, CommandLine.ParseResult arguments)
            throws Exception {
        if (!(exception instanceof InputException) && !(exception instanceof UncheckedIOException)) {
            throw exception;
        }
        String name = verb.getCommandSpec().qualifiedName() + ": ";
        if (exception instanceof InputException wrong && wrong.all().size() > 1) {
            verb.getErr().println(name + (wrong.all().size() + wrong.untold()) + " errors found; nothing was written");
            wrong.all().forEach(badRow -> verb.getErr().println("  " + badRow.getMessage()));
            if (wrong.untold() > 0) {
                verb.getErr().println("  and " + wrong.untold() + " more");
            }
        } else {
            verb.getErr().println(name + exception.getMessage());
        }
        return BAD_INPUT;
    }
}
