package org.proviso.election.rules;

import java.time.Instant;
import org.proviso.core.CountyRuling;

/** A county ruling as it was recorded: by which account and when. */
public record RecordedRuling(int actNo, CountyRuling ruling, String recordedBy, Instant recordedAt) {}
