package org.proviso.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.proviso.core.ElectionId;
import org.proviso.core.Key;
import org.proviso.core.chain.ChainHead;
import org.proviso.election.ElectionService;
import org.proviso.files.AtomicFile;
import org.proviso.files.InputException;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.context.ApplicationContext;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a chain of the office's ledger as a file that anybody can check. */
@Command(
        name = "export-ledger",
        description = "Writes an election's ledger to a file that verify-ledger can check.",
        mixinStandardHelpOptions = true)
final class ExportLedgerCommand implements Callable<Integer> {

    @Parameters(paramLabel = "ELECTION", description = "The election ID, or office for entries outside any election.")
    private String election;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "FILE",
            description = "The file to write. An existing file is replaced.")
    private Path out;

    @Mixin
    private OfficeDatabaseStore database = new OfficeDatabaseStore();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        return database.use(this::export);
    }

    private int export(ApplicationContext office) {
        LedgerChain chain = chain(office.getBean(ElectionService.class));
        LedgerService ledger = office.getBean(LedgerService.class);
        AtomicFile.write(out, writer -> ledger.export(chain, writer));
        ChainHead head = ledger.head(chain);
        spec.commandLine().getOut().println("written: " + head.sequence() + " entries, head " + head.hash());
        return 0;
    }

    private LedgerChain chain(ElectionService elections) {
        if (election.equals(LedgerChain.OFFICE.name())) {
            return LedgerChain.OFFICE;
        }
        if (!elections.all().contains(new ElectionId(election))) {
            throw new InputException(
                    election,
                    0,
                    "",
                    "is not an election of this office; its elections are: " + Key.join(", ", elections.all()));
        }
        return LedgerChain.of(new ElectionId(election));
    }
}
