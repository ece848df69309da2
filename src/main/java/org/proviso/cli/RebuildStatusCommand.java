package org.proviso.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.Key;
import org.proviso.election.ElectionService;
import org.proviso.files.InputException;
import org.proviso.status.StatusRebuild;
import org.springframework.context.ApplicationContext;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Rebuilds the tables of the voters' look-up: after an update that lets them say more, or when they were lost. */
@Command(
        name = "rebuild-status",
        description = "Rebuilds the voters' status look-up from the cases and sessions in the office's database.",
        mixinStandardHelpOptions = true)
final class RebuildStatusCommand implements Callable<Integer> {

    @Parameters(arity = "0..1", paramLabel = "ELECTION", description = "The election ID. Without it, every election.")
    private @Nullable String election;

    @Mixin
    private OfficeDatabaseStore database = new OfficeDatabaseStore();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        return database.use(this::rebuild);
    }

    private int rebuild(ApplicationContext office) {
        List<ElectionId> known = office.getBean(ElectionService.class).all();
        if (election != null && !known.contains(new ElectionId(election))) {
            throw new InputException(
                    election, 0, "", "is not an election of this office; its elections are: " + Key.join(", ", known));
        }
        for (ElectionId id : election == null ? known : List.of(new ElectionId(election))) {
            int lines = office.getBean(StatusRebuild.class).of(id);
            spec.commandLine().getOut().println(id + ": " + lines + " lines");
        }
        spec.commandLine().getOut().flush();
        return 0;
    }
}
