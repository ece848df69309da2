package org.proviso.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.proviso.files.ledger.LedgerFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks an exported ledger without any database. Exit code 1 when an entry does not fit. */
@Command(
        name = "verify-ledger",
        description = "Checks an exported ledger entry by entry and names the first one that does not match.",
        mixinStandardHelpOptions = true)
final class VerifyLedgerCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", description = "The exported ledger, one entry per line.")
    private Path file;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        LedgerFile.ChainVerdict verdict = LedgerFile.verify(file);
        if (verdict.fault().isPresent()) {
            out.println("BROKEN: " + verdict.fault().get());
            out.println(verdict.entries() + " entries before it are intact.");
            return 1;
        }
        out.println("holds: " + verdict.entries() + " entries, head " + verdict.headHash());
        return 0;
    }
}
