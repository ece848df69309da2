package org.proviso.sample;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The developers' command that makes the invented sample elections ({@code DEVELOPERS.md} says how to run it). */
@Command(
        name = "make-sample",
        mixinStandardHelpOptions = true,
        description = "Makes the invented sample elections. The same seed gives the same files.")
public final class MakeSample implements Callable<Integer> {

    @Option(
            names = "--name",
            paramLabel = "NAME",
            description = "tamarack-general or tamarack-primary; may be given twice. Without it, both.")
    private List<String> names = new ArrayList<>();

    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            defaultValue = "" + Samples.PUBLISHED_SEED,
            description = "The random seed (default: ${DEFAULT-VALUE}, as in the published files).")
    private long seed;

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            defaultValue = "sample-cases",
            description = "The folder to write the election folders to (default: ${DEFAULT-VALUE}).")
    private Path out = Path.of("sample-cases");

    @Spec
    private CommandSpec spec = CommandSpec.create();

    public static void main(String... arguments) {
        System.exit(new CommandLine(new MakeSample()).execute(arguments));
    }

    /** Checks every name before anything is written. */
    @Override
    public Integer call() throws IOException {
        List<String> wanted = names.isEmpty() ? Samples.names() : names;
        for (String name : wanted) {
            if (!Samples.names().contains(name)) {
                throw new ParameterException(
                        spec.commandLine(),
                        "no sample election \"" + name + "\"; there are " + String.join(" and ", Samples.names()));
            }
        }
        for (String name : wanted) {
            Samples.write(name, seed, out);
            spec.commandLine().getOut().println("Made " + out.resolve(name) + " (seed " + seed + ").");
        }
        return 0;
    }
}
