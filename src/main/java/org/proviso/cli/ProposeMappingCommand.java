package org.proviso.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.files.AtomicFile;
import org.proviso.files.InputException;
import org.proviso.files.mapping.Conversion;
import org.proviso.files.mapping.FileRecognizer;
import org.proviso.files.mapping.LayoutReader;
import org.proviso.files.mapping.ListKind;
import org.proviso.files.mapping.Mapping;
import org.proviso.files.mapping.MappingYaml;
import org.proviso.files.mapping.Proposal;
import org.proviso.files.mapping.Recognized;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Recognizes an office's own file and writes the mapping it proposes. Exit code 1 when a needed column has no source. */
@Command(
        name = "propose-mapping",
        description = {
            "Recognizes a file of the office's own: encoding, delimiter, header, dates and codes. Proposes which of its",
            "columns is which of ours, says what does not fit, and writes the mapping, to be corrected by hand."
        },
        mixinStandardHelpOptions = true)
final class ProposeMappingCommand implements Callable<Integer> {

    @Parameters(paramLabel = "<file>", description = "The office's file.")
    private Path file;

    @Option(
            names = "--list",
            required = true,
            paramLabel = "LIST",
            description = "Which list it is: roll, mail_ballots, check_ins, voted_elsewhere, streets, precincts,"
                    + " ballot_styles, contests, transmittals or envelopes.")
    private String list;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "FILE",
            description = "The output file of the mapping (YAML).")
    private Path out;

    @Option(
            names = "--layout",
            paramLabel = "FILE",
            description = "The layout of a fixed-width file (CSV: name,from,to; characters counted from 1).")
    private @Nullable Path layout;

    @Option(
            names = "--year",
            paramLabel = "YYYY",
            description = "The file's year; two-digit years end with the year after it (default: of the file's date).")
    private @Nullable Integer year;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter print = spec.commandLine().getOut();
        ListKind kind = kind();
        Recognized recognized = layout == null
                ? FileRecognizer.recognize(file, year())
                : FileRecognizer.recognize(
                        file, LayoutReader.read(layout, warning -> print.println("warning: " + warning)), year());
        Mapping mapping = Proposal.of(kind, file.getFileName().toString(), recognized);
        AtomicFile.writeText(out, MappingYaml.of(mapping));
        print.print(RecognizedText.of(
                file.getFileName().toString(), recognized, mapping, Conversion.preview(file, mapping, 0)));
        print.println("Written to " + out + ".");
        print.flush();
        return mapping.missing().isEmpty() ? 0 : 1;
    }

    private ListKind kind() {
        return Code.find(ListKind.class, list)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "--list must be one of "
                                + Arrays.stream(ListKind.values())
                                        .map(Code::code)
                                        .collect(Collectors.joining(", "))));
    }

    private int year() {
        if (year != null) {
            return year;
        }
        if (!Files.exists(file)) {
            throw new InputException(file.toString(), 0, "", "is missing");
        }
        try {
            return Files.getLastModifiedTime(file)
                    .toInstant()
                    .atOffset(ZoneOffset.UTC)
                    .getYear();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
