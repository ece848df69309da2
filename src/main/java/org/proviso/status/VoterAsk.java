package org.proviso.status;

import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;
import org.proviso.core.rules.Ask;

/** What a voter may still bring, and its own deadline on the county's clock; null where nobody can say it. */
public record VoterAsk(Ask ask, @Nullable LocalDateTime until) {}
