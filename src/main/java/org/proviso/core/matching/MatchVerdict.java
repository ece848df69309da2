package org.proviso.core.matching;

import org.proviso.core.Code;

/** What the matching makes of an envelope. It is a proposal: only a person confirms a link. */
public enum MatchVerdict implements Code {
    /** One voter matches with nothing against it, and no one else matches. */
    SURE,
    /** One voter fits far better than all others, but a person should look. */
    LIKELY,
    /** Two or more voters fit about equally, or one in part: the papers cannot tell who it is. */
    AMBIGUOUS,
    /** No voter of the roll fits. */
    NONE
}
