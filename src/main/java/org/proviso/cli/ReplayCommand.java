package org.proviso.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.proviso.canvass.replay.ElectionReplayService;
import org.proviso.canvass.replay.ElectionReplayVerdict;
import org.proviso.core.ElectionId;
import org.proviso.core.Key;
import org.proviso.election.ElectionService;
import org.proviso.files.InputException;
import org.springframework.context.ApplicationContext;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Compares the office's tables with its ledger. Exit code 1 when anything differs. */
@Command(
        name = "replay",
        description = "Replays an election's ledger and compares it with the office's tables in both directions.",
        mixinStandardHelpOptions = true)
final class ReplayCommand implements Callable<Integer> {

    @Parameters(arity = "0..1", paramLabel = "ELECTION", description = "The election ID. Without it, every election.")
    private @Nullable String election;

    @Mixin
    private OfficeDatabaseStore database = new OfficeDatabaseStore();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        return database.use(this::replay);
    }

    private int replay(ApplicationContext office) {
        List<ElectionId> known = office.getBean(ElectionService.class).all();
        if (election != null && !known.contains(new ElectionId(election))) {
            throw new InputException(
                    election, 0, "", "is not an election of this office; its elections are: " + Key.join(", ", known));
        }
        ElectionReplayService service = office.getBean(ElectionReplayService.class);
        List<ElectionReplayVerdict> verdicts = (election == null ? known : List.of(new ElectionId(election)))
                .stream().map(service::replay).toList();
        verdicts.forEach(this::print);
        return verdicts.stream().allMatch(ElectionReplayVerdict::isWhole) ? 0 : 1;
    }

    private void print(ElectionReplayVerdict verdict) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(verdict.electionId() + ": "
                + (verdict.isWhole() ? "tables and ledger agree" : "DIFFERENCES FOUND: " + verdict.differing()));
        verdict.looked().forEach(line -> out.println("  " + line));
        verdict.differences().forEach(line -> out.println("  - " + line));
        out.flush();
    }
}
