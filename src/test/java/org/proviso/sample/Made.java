package org.proviso.sample;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.proviso.sample.county.FileRow;

/** The two published elections, made once for all tests. */
final class Made {

    static final SampleElection GENERAL = Samples.make("tamarack-general", Samples.PUBLISHED_SEED);
    static final SampleElection PRIMARY = Samples.make("tamarack-primary", Samples.PUBLISHED_SEED);

    private Made() {}

    static List<SampleElection> both() {
        return List.of(GENERAL, PRIMARY);
    }

    static List<FileRow> table(SampleElection election, String file) {
        return election.tables().get(file);
    }

    static Map<String, FileRow> by(String column, List<FileRow> rows) {
        return rows.stream()
                .collect(Collectors.toMap(row -> row.get(column), Function.identity(), (a, b) -> a, TreeMap::new));
    }

    static Map<String, FileRow> envelopes(SampleElection election) {
        return by("envelope_no", table(election, "envelopes.csv"));
    }

    static Map<String, FileRow> roll(SampleElection election) {
        return by("voter_id", table(election, "roll.csv"));
    }

    static List<FileRow> scenario(SampleElection election, String scenario) {
        return election.truth().stream()
                .filter(row -> row.get("scenario").equals(scenario))
                .toList();
    }
}
