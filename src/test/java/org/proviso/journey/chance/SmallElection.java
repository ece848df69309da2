package org.proviso.journey.chance;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.deciding.DeciderKind;
import org.proviso.files.election.ElectionFolder;
import org.proviso.journey.Primary;
import org.proviso.journey.Truth;

/**
 * An election of some thirty envelopes of all kinds, taken from the sample primary. Half of them are in its folder; the
 * others are paper, which people receive and key.
 *
 * @param paper every envelope as it reads, in the folder or not
 * @param toReceive those that are not in the folder
 * @param sentBack how many envelopes each voting location sent back
 * @param withReturn locations whose returns are in the folder, one of them wrong
 * @param decider who decides in it
 */
record SmallElection(
        Path folder,
        Map<EnvelopeNumber, Envelope> paper,
        Map<EnvelopeNumber, Truth> truths,
        List<EnvelopeNumber> toReceive,
        Map<String, Integer> sentBack,
        Set<String> withReturn,
        DeciderKind decider) {

    static final ElectionId ID = new ElectionId("chance-primary");

    /** Scenarios of which there are two envelopes; of all others there is one. */
    private static final Set<String> TWICE = Set.of("extended_hours", "in_order", "wrong_style");

    private static final int OTHER_VOTERS = 150;
    private static final List<String> WHOLE =
            List.of("ballot-styles.csv", "contests.csv", "precincts.csv", "streets.csv");

    /** Writes the folder, below the one given; a board decides. */
    static SmallElection in(Path parent) {
        return in(parent, DeciderKind.BOARD);
    }

    static SmallElection in(Path parent, DeciderKind decider) {
        try {
            return new Writing(Files.createDirectories(parent.resolve(ID.value())), decider).write();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Path file(String name) {
        return folder.resolve(name);
    }

    /** Writes it. */
    private static final class Writing {

        private final Path folder;
        private final Map<EnvelopeNumber, Truth> truths = new LinkedHashMap<>();
        private final Map<EnvelopeNumber, Envelope> paper = new LinkedHashMap<>();
        private final List<EnvelopeNumber> toReceive = new ArrayList<>();

        private final DeciderKind decider;

        Writing(Path folder, DeciderKind decider) {
            this.folder = folder;
            this.decider = decider;
        }

        SmallElection write() throws IOException {
            choose();
            for (String name : WHOLE) {
                Files.copy(Primary.FOLDER.resolve(name), folder.resolve(name));
            }
            Set<String> voters = new HashSet<>();
            truths.values().forEach(truth -> voters.add(truth.voterId()));
            rows(
                    "roll.csv",
                    cells -> voters.contains(cells[0]) || voters.size() < OTHER_VOTERS && voters.add(cells[0]));
            rows("check-ins.csv", cells -> voters.contains(cells[0]));
            rows("mail-ballots.csv", cells -> voters.contains(cells[0]));
            rows("envelopes.csv", cells -> isInFolder(new EnvelopeNumber(cells[0])));
            Files.writeString(
                    folder.resolve("election.yaml"),
                    Files.readString(Primary.FOLDER.resolve("election.yaml"))
                            .replace("Tamarack County Primary", "Chance Primary"));
            for (EnvelopeNumber number : paper.keySet()) {
                Path picture = Path.of("signatures", "envelopes", number + ".png");
                if (isInFolder(number)) {
                    Files.createDirectories(folder.resolve(picture).getParent());
                    Files.copy(Primary.FOLDER.resolve(picture), folder.resolve(picture));
                }
            }
            return returns();
        }

        private void choose() {
            Map<String, Integer> chosen = new TreeMap<>();
            Truth.of(Primary.ID).values().forEach(truth -> {
                if (chosen.merge(truth.scenario(), 1, Integer::sum) <= (TWICE.contains(truth.scenario()) ? 2 : 1)) {
                    truths.put(truth.envelopeNo(), truth);
                }
            });
            for (Envelope envelope : ElectionFolder.read(Primary.FOLDER).envelopes()) {
                if (truths.containsKey(envelope.envelopeNo())) {
                    paper.put(envelope.envelopeNo(), envelope);
                    if (paper.size() % 2 == 0) {
                        toReceive.add(envelope.envelopeNo());
                    }
                }
            }
        }

        private boolean isInFolder(EnvelopeNumber number) {
            return paper.containsKey(number) && !toReceive.contains(number);
        }

        /** The sample's rows that are wanted; no text of these files has a comma. */
        private void rows(String name, Predicate<String[]> wanted) throws IOException {
            List<String> lines = Files.readAllLines(Primary.FOLDER.resolve(name));
            List<String> kept = new ArrayList<>(lines.subList(0, 1));
            lines.stream()
                    .skip(1)
                    .filter(line -> wanted.test(line.split(",", -1)))
                    .forEach(kept::add);
            Files.write(folder.resolve(name), kept);
        }

        /** Every second location's return is there, the first of them says one too many. */
        private SmallElection returns() throws IOException {
            Map<String, Integer> sentBack = new TreeMap<>();
            paper.values().stream()
                    .filter(envelope -> envelope.source() == Envelope.Source.POLL)
                    .forEach(envelope -> sentBack.merge(envelope.cast().votingLocation(), 1, Integer::sum));
            List<String> lines = new ArrayList<>(Files.readAllLines(Primary.FOLDER.resolve("transmittals.csv"))
                    .subList(0, 1));
            Set<String> withReturn = new HashSet<>();
            int turn = 0;
            for (Map.Entry<String, Integer> location : sentBack.entrySet()) {
                if (turn % 2 == 0) {
                    int said = location.getValue() + (turn == 0 ? 1 : 0);
                    withReturn.add(location.getKey());
                    lines.add(String.join(
                            ",",
                            location.getKey(),
                            "2026-08-04",
                            "B0" + turn,
                            "1",
                            "1",
                            "60",
                            String.valueOf(said),
                            "0",
                            String.valueOf(60 - said),
                            String.valueOf(said),
                            "0",
                            "0"));
                }
                turn++;
            }
            Files.write(folder.resolve("transmittals.csv"), lines);
            return new SmallElection(folder, paper, truths, List.copyOf(toReceive), sentBack, withReturn, decider);
        }
    }
}
