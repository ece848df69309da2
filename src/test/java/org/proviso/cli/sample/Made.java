package org.proviso.cli.sample;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The two published elections, made once for all tests. */
final class Made {

    static final SampleElection GENERAL = Samples.make("tamarack-general", Samples.PUBLISHED_SEED);
    static final SampleElection PRIMARY = Samples.make("tamarack-primary", Samples.PUBLISHED_SEED);

    private Made() {}

    static List<SampleElection> both() {
        return List.of(GENERAL, PRIMARY);
    }

    static List<Row> table(SampleElection election, String file) {
        return election.tables().get(file);
    }

    static Map<String, Row> by(String column, List<Row> rows) {
        return rows.stream()
                .collect(Collectors.toMap(row -> row.get(column), Function.identity(), (a, b) -> a, TreeMap::new));
    }

    static Map<String, Row> envelopes(SampleElection election) {
        return by("envelope_no", table(election, "envelopes.csv"));
    }

    static Map<String, Row> roll(SampleElection election) {
        return by("voter_id", table(election, "roll.csv"));
    }

    static List<Row> scenario(SampleElection election, String scenario) {
        return election.truth().stream()
                .filter(row -> row.get("scenario").equals(scenario))
                .toList();
    }
}
