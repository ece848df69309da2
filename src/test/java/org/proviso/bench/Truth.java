package org.proviso.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The voter of each envelope, empty for one who is not on the roll, and what happened to it. */
record Truth(Map<String, String> voters, Map<String, List<Kind>> kinds) {

    static Truth read(Path file) throws IOException {
        Map<String, String> voters = new HashMap<>();
        Map<String, List<Kind>> kinds = new HashMap<>();
        List<String> lines = Files.readAllLines(file);
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", -1);
            voters.put(cells[0], cells[1]);
            kinds.put(
                    cells[0],
                    Arrays.stream(cells[2].split(";")).map(Kind::valueOf).toList());
        }
        return new Truth(voters, kinds);
    }

    long onRoll() {
        return voters.values().stream().filter(voter -> !voter.isEmpty()).count();
    }

    /** Whether the kind holds of the envelope; one of writing only where its person is a voter. */
    boolean isOf(String envelope, Kind kind) {
        boolean voter = !voters.get(envelope).isEmpty();
        return kinds.get(envelope).contains(kind) && (voter || kind.isOffRoll());
    }

    boolean isRight(String envelope, String voter) {
        return !voter.isEmpty() && voters.get(envelope).equals(voter);
    }
}
