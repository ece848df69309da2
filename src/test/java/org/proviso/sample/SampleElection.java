package org.proviso.sample;

import java.util.List;
import java.util.SortedMap;
import org.proviso.sample.county.FileRow;

/** All files of one sample election, in memory: tables by name, pictures by path, and the truth beside them. */
record SampleElection(
        String id,
        String electionYaml,
        SortedMap<String, List<FileRow>> tables,
        SortedMap<String, byte[]> pictures,
        List<FileRow> truth) {}
