package org.proviso.board;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.proviso.core.act.Refusal;
import org.proviso.election.ElectionService;
import org.proviso.election.RulesService;
import org.springframework.stereotype.Component;

/** Tells the deciding bodies what time it is, and under which rules. */
@Component
public class BoardClock {

    private final Clock clock;
    private final ElectionService elections;
    private final RulesService rules;

    BoardClock(Clock clock, ElectionService elections, RulesService rules) {
        this.clock = clock;
        this.elections = elections;
        this.rules = rules;
    }

    public OffsetDateTime now() {
        return OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC);
    }

    /** Why nothing can be done in an election that is closed. */
    public Optional<Refusal> closed(ElectionId electionId) {
        return elections.closed(electionId);
    }

    public ElectionAsOf electionAsOfNow(ElectionId electionId) {
        Election election = elections
                .find(electionId)
                .orElseThrow(() -> new IllegalArgumentException("The office has no election \"" + electionId + "\"."));
        LocalDateTime at = LocalDateTime.ofInstant(clock.instant(), election.zone());
        return new ElectionAsOf(election, rules.book(electionId), at);
    }
}
