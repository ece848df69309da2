package org.proviso.files.election;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;
import org.proviso.core.BallotStyle;
import org.proviso.core.CheckIn;
import org.proviso.core.Contest;
import org.proviso.core.Election;
import org.proviso.core.Envelope;
import org.proviso.core.MailBallot;
import org.proviso.core.PrecinctPart;
import org.proviso.core.StreetSegment;
import org.proviso.core.Transmittal;
import org.proviso.core.VotedElsewhere;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.files.InputException;
import org.proviso.files.SetAside;

/**
 * Everything the files of one election say, read and checked against each other. Lists are in file order; voters are
 * by voter id in the order of the roll, mail ballots and check-ins by voter id. {@code setAside} says of how many rows of
 * which outside list (its file's name) the folder was read without.
 */
public record ElectionFolder(
        Path folder,
        Election election,
        List<Contest> contests,
        List<BallotStyle> styles,
        List<PrecinctPart> precincts,
        List<StreetSegment> streets,
        Map<VoterId, Voter> voters,
        Map<VoterId, List<MailBallot>> mailBallots,
        Map<VoterId, List<CheckIn>> checkIns,
        List<VotedElsewhere> votedElsewhere,
        List<Transmittal> transmittals,
        List<Envelope> envelopes,
        List<String> warnings,
        Map<String, Integer> setAside) {

    /** Reads the whole folder, or throws the first {@link InputException} and gives nothing. */
    public static ElectionFolder read(Path folder) {
        return read(folder, rows -> {});
    }

    /** The same; {@code progress} hears after each row of the roll how many there were. */
    public static ElectionFolder read(Path folder, LongConsumer progress) {
        return read(folder, progress, null);
    }

    /** The same, but a bad row of an outside list is set aside where somebody takes it, and the rest is read. */
    public static ElectionFolder read(Path folder, LongConsumer progress, @Nullable SetAside aside) {
        return new FolderReader(folder, progress, aside).read();
    }
}
