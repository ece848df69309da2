package org.proviso.cli.option;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.proviso.files.SetAside;
import org.proviso.files.SetAsideCount;
import org.proviso.files.csv.SetAsideFile;
import org.proviso.files.election.ElectionFolder;
import picocli.CommandLine.Option;

/** The option of the verbs that read outside lists: go on without their bad rows, and say which those are. */
public final class SetAsideOption {

    @Option(
            names = "--set-aside",
            paramLabel = "FILE",
            description = {
                "Goes on without the bad rows of the roll, mail ballots, check-ins, streets and other counties,",
                "and writes them to this file (CSV) with the reason. Without it one bad row refuses all."
            })
    private @Nullable Path file;

    /** The folder; {@code print} is told how many rows of which list were set aside. */
    public ElectionFolder read(Path folder, PrintWriter print) {
        return reading(aside -> ElectionFolder.read(folder, rows -> {}, aside), print);
    }

    /** What the reading gives, with the rows it sets aside in the file; strict where the option is not given. */
    public <T> T reading(Function<@Nullable SetAside, T> reading, PrintWriter print) {
        Path target = file;
        if (target == null) {
            return reading.apply(null);
        }
        SetAsideCount[] counted = new SetAsideCount[1];
        T read = SetAsideFile.during(target, out -> {
            counted[0] = new SetAsideCount(out);
            return reading.apply(counted[0]);
        });
        print.println("set aside: " + SetAsideCount.words(counted[0].counts()) + "; written to " + target);
        print.flush();
        return read;
    }
}
