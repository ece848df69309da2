package org.proviso.review.queue;

import java.util.List;

/** Where a case stands in the order of a list, so that the one after it is found once it has left the list. */
public record QueuePosition(List<Object> values) {

    public QueuePosition {
        values = List.copyOf(values);
    }
}
