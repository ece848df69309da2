package org.proviso.cli.sample;

import java.util.List;
import java.util.SortedMap;

/** All files of one sample election, in memory: tables by name, pictures by path, and the truth beside them. */
record SampleElection(
        String id,
        String electionYaml,
        SortedMap<String, List<Row>> tables,
        SortedMap<String, byte[]> pictures,
        List<Row> truth) {}
