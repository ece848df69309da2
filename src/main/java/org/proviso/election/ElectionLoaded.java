package org.proviso.election;

import org.proviso.core.ElectionId;
import org.proviso.files.election.ElectionFolder;

/**
 * An election's own tables are written and the other rooms take their part of the folder, in the same transaction and
 * in the order of the rooms: if one of them fails, nothing was loaded.
 */
public record ElectionLoaded(ElectionId electionId, ElectionFolder folder) {

    public static final int ROLL_TAKES = 1;
    public static final int INTAKE_TAKES = 2;
    public static final int REVIEW_TAKES = 3;
}
