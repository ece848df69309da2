package org.proviso.files.election;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proviso.core.BallotStyle;
import org.proviso.core.CheckedReceipt;
import org.proviso.core.Contest;
import org.proviso.core.CourtOrder;
import org.proviso.core.Election;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.PrecinctPart;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.StreetSegment;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.files.InputException;
import org.proviso.files.csv.BadRowFinder;
import org.proviso.files.csv.NumberedRows;

/**
 * What the files of an election must agree on. A reference that would leave an envelope without a ballot is an error;
 * what the office can live with, such as a mail ballot of somebody who is not on the roll, is a warning.
 */
final class FolderChecks {

    private final Path folder;
    private final List<String> warnings;

    FolderChecks(Path folder, List<String> warnings) {
        this.folder = folder;
        this.warnings = warnings;
    }

    void ballots(
            NumberedRows<Contest> contests,
            NumberedRows<BallotStyleReader.StyleContest> lines,
            List<BallotStyle> styles,
            NumberedRows<PrecinctPart> precincts,
            NumberedRows<StreetSegment> streets) {
        Set<String> contestIds =
                contests.values().stream().map(Contest::contestId).collect(Collectors.toSet());
        Set<String> parts = parts(precincts);
        refer(lines, "contest_id", BallotStyleReader.StyleContest::contestId, contestIds, "contests.csv");
        refer(precincts, "ballot_style", PrecinctPart::ballotStyle, names(styles), "ballot-styles.csv");
        refer(streets, "precinct", FolderChecks::part, parts, "precincts.csv");
    }

    void roll(Collection<Voter> voters, NumberedRows<PrecinctPart> precincts) {
        Set<String> parts = parts(precincts);
        List<Voter> lost = voters.stream()
                .filter(voter -> !voter.residence().precinct().isEmpty())
                .filter(voter -> !parts.contains(
                        part(voter.residence().precinct(), voter.residence().split())))
                .toList();
        if (!lost.isEmpty()) {
            Voter.Residence first = lost.get(0).residence();
            warnings.add("roll: " + counted(lost.size(), "voter is", "voters are")
                    + " in a precinct missing from precincts.csv, the first in "
                    + InputException.quoted(part(first.precinct(), first.split())));
        }
    }

    <T> void voters(NumberedRows<T> rows, Function<T, VoterId> voterId, Map<VoterId, Voter> voters) {
        int lost = 0;
        int first = 0;
        for (int i = rows.values().size() - 1; i >= 0; i--) {
            if (!voters.containsKey(voterId.apply(rows.values().get(i)))) {
                lost++;
                first = i;
            }
        }
        if (lost > 0) {
            String id = InputException.quoted(
                    voterId.apply(rows.values().get(first)).value());
            warnings.add(rows.file() + ": " + counted(lost, "row names a voter", "rows name voters")
                    + " not on the roll, the first on line " + rows.line(first) + " (" + id + ")");
        }
    }

    void envelopes(NumberedRows<Envelope> envelopes, List<BallotStyle> styles, Election election) {
        laterEnvelopes(envelopes, styles, election);
        ordered(envelopes, election);
    }

    /** What every file of envelopes must keep to, whenever it comes. */
    void laterEnvelopes(NumberedRows<Envelope> envelopes, List<BallotStyle> styles, Election election) {
        Set<String> names = names(styles);
        refer(envelopes, "ballot_style_cast", envelope -> envelope.cast().ballotStyle(), names, "ballot-styles.csv");
        for (int i = 0; i < envelopes.values().size(); i++) {
            String image = envelopes.values().get(i).handling().signatureImage();
            if (!image.isEmpty() && !Files.isRegularFile(inFolder(envelopes, i, image))) {
                warnings.add(envelopes.file() + " line " + envelopes.line(i) + ": signature image not found: "
                        + InputException.quoted(image));
            }
        }
        receipts(envelopes, election);
        shared(envelopes);
    }

    /** A receipt number on several envelopes: each comes in, and a person settles it in the office. */
    private void shared(NumberedRows<Envelope> envelopes) {
        Map<String, EnvelopeNumber> first = new HashMap<>();
        for (int i = 0; i < envelopes.values().size(); i++) {
            Envelope envelope = envelopes.values().get(i);
            ReceiptNumber number = envelope.receiptNo();
            EnvelopeNumber other = number == null ? null : first.putIfAbsent(number.compared(), envelope.envelopeNo());
            if (other != null) {
                warnings.add(envelopes.file() + " line " + envelopes.line(i) + ": the receipt number of envelope "
                        + InputException.quoted(envelope.envelopeNo().value()) + " is also on "
                        + InputException.quoted(other.value()));
            }
        }
    }

    /** In one spelling only, so that a voter's receipt reads as the office's files do. */
    private static void receipts(NumberedRows<Envelope> envelopes, Election election) {
        if (election.receipts() != Election.Receipts.CHECK_DIGIT) {
            return;
        }
        List<InputException> bad = new ArrayList<>();
        for (int i = 0; i < envelopes.values().size(); i++) {
            ReceiptNumber number = envelopes.values().get(i).receiptNo();
            if (number != null && !CheckedReceipt.find(number.value()).equals(Optional.of(number))) {
                bad.add(envelopes.wrong(
                        i, "receipt_no", InputException.quoted(number.value()) + " " + wrongWith(number)));
            }
        }
        BadRowFinder.refuse(bad);
    }

    private static String wrongWith(ReceiptNumber number) {
        return CheckedReceipt.slip(number.value())
                        .map(CheckedReceipt.Problem::words)
                        .orElse("is not written as 4817-2206-5")
                + " (election.yaml says receipts have a check digit)";
    }

    private void ordered(NumberedRows<Envelope> envelopes, Election election) {
        Set<EnvelopeNumber> numbers =
                envelopes.values().stream().map(Envelope::envelopeNo).collect(Collectors.toSet());
        for (CourtOrder order : election.orders()) {
            for (EnvelopeNumber number : order.envelopeNos()) {
                if (!numbers.contains(number)) {
                    warnings.add("election.yaml: an order names envelope " + InputException.quoted(number.value())
                            + ", which is not in envelopes.csv");
                }
            }
        }
    }

    /** A name that leads out of the folder is refused: it could show any file of the machine as a signature. */
    private Path inFolder(NumberedRows<Envelope> envelopes, int index, String image) {
        return ImageFile.within(folder, image)
                .orElseThrow(() -> envelopes.wrong(
                        index, "signature_image", InputException.quoted(image) + " " + ImageFile.OUTSIDE));
    }

    private static <T> void refer(
            NumberedRows<T> rows, String column, Function<T, String> reference, Set<String> known, String file) {
        List<InputException> bad = new ArrayList<>();
        for (int i = 0; i < rows.values().size(); i++) {
            String name = reference.apply(rows.values().get(i));
            if (!name.isEmpty() && !known.contains(name)) {
                bad.add(rows.wrong(i, column, notIn(name, file)));
            }
        }
        BadRowFinder.refuse(bad);
    }

    static String notIn(String name, String file) {
        return InputException.quoted(name) + " is not in " + file;
    }

    private static Set<String> names(List<BallotStyle> styles) {
        return styles.stream().map(BallotStyle::style).collect(Collectors.toSet());
    }

    /** Every part, and every precinct as a whole: where a file does not say the split, it is unknown. */
    static Set<String> parts(NumberedRows<PrecinctPart> precincts) {
        return precincts.values().stream()
                .flatMap(at -> Stream.of(at.precinct(), part(at.precinct(), at.split())))
                .collect(Collectors.toSet());
    }

    static String part(StreetSegment street) {
        return part(street.precinct(), street.split());
    }

    private static String part(String precinct, String split) {
        return split.isEmpty() ? precinct : precinct + " split " + split;
    }

    private static String counted(int count, String single, String many) {
        return count + " " + (count == 1 ? single : many);
    }
}
