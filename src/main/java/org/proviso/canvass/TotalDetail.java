package org.proviso.canvass;

import java.util.List;

/** What a total is made of, to find where it breaks: under each heading the bags, batches, envelopes or notes, one a line. */
public record TotalDetail(List<Part> parts) {

    /** Lines under a heading; {@code more} are not named. */
    public record Part(String heading, List<String> lines, int more) {}
}
