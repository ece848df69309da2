package org.proviso.files.election;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.proviso.core.BallotStyle;
import org.proviso.core.Election;
import org.proviso.core.Envelope;
import org.proviso.core.Transmittal;
import org.proviso.files.InputException;

/**
 * What came in after the election was loaded, as files: {@code envelopes.csv}, {@code transmittals.csv} or both, with the
 * pictures of signatures that the envelopes name. Lists are in file order.
 */
public record LaterFolder(
        List<Envelope> envelopes, List<Transmittal> transmittals, SignatureFiles signatures, List<String> warnings) {

    public static final String ENVELOPES = "envelopes.csv";
    public static final String TRANSMITTALS = "transmittals.csv";

    /**
     * Reads the folder whole, or throws the {@link InputException} that names every bad row of its file and gives nothing.
     * Ballot styles must be the election's.
     */
    public static LaterFolder read(Path folder, List<BallotStyle> styles, Election election) {
        Path envelopesFile = folder.resolve(ENVELOPES);
        Path transmittalsFile = folder.resolve(TRANSMITTALS);
        if (!Files.exists(envelopesFile) && !Files.exists(transmittalsFile)) {
            throw new InputException(ENVELOPES, 0, "", "is missing, and " + TRANSMITTALS + " too; choose one or both");
        }
        List<String> warnings = new ArrayList<>();
        List<Transmittal> transmittals = Files.exists(transmittalsFile)
                ? TransmittalReader.read(transmittalsFile, warnings::add).values()
                : List.of();
        List<Envelope> envelopes =
                Files.exists(envelopesFile) ? envelopes(folder, styles, election, warnings) : List.of();
        return new LaterFolder(
                envelopes, transmittals, SignatureFiles.ofEnvelopes(folder, envelopes), List.copyOf(warnings));
    }

    private static List<Envelope> envelopes(
            Path folder, List<BallotStyle> styles, Election election, List<String> warnings) {
        var envelopes = EnvelopeReader.read(folder.resolve(ENVELOPES), warnings::add);
        new FolderChecks(folder, warnings).laterEnvelopes(envelopes, styles, election);
        return envelopes.values();
    }
}
