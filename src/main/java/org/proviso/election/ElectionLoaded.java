package org.proviso.election;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.proviso.files.election.ElectionFolder;

/**
 * An election's own tables are written and the other rooms take their part of the folder, in the same transaction and
 * in the order of the rooms: if one of them fails, nothing was loaded. {@code aside} are the rows that could not be
 * read, null where every row was.
 */
public record ElectionLoaded(
        ElectionId electionId,
        ElectionFolder folder,
        @Nullable Aside aside) {

    public static final int ROLL_TAKES = 1;
    public static final int INTAKE_TAKES = 2;
    public static final int REVIEW_TAKES = 3;

    /** Rows that are set aside, in a file of {@link org.proviso.files.csv.SetAsideFile}, and who goes without them why. */
    public record Aside(Path rows, String because, UserName by) {}
}
