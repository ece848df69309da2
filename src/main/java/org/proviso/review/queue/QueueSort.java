package org.proviso.review.queue;

import org.proviso.core.Code;

/** In which order a list of cases is read. Envelopes that are equal in it follow by number. */
public enum QueueSort implements Code {
    PRIORITY,
    ENVELOPE,
    OUTLOOK,
    REASON,
    LOCATION,
    PRECINCT,
    LANGUAGE,
    HOLDER,
    AGE
}
