package org.proviso.review.file;

import java.time.LocalDateTime;
import org.proviso.review.facts.SearchFound;

/** A search that was recorded: what it came to, its note, by whom and when on the county's clock. */
public record SearchSummary(SearchFound found, String note, String by, LocalDateTime at, String takenBackBecause) {}
