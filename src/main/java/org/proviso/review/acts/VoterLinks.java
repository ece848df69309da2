package org.proviso.review.acts;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.review.VoterChoice;
import org.proviso.review.facts.LinkStore;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Who the voter of each envelope is, as presumed by the match or settled by a person, for the rooms that write to them. */
@Component
@BetweenRooms
public class VoterLinks {

    private final LinkStore links;

    VoterLinks(LinkStore links) {
        this.links = links;
    }

    /** The newest links of several envelopes, by envelope number. */
    @Transactional(readOnly = true)
    public Map<EnvelopeNumber, Link> newest(ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        return links.newest(electionId, envelopeNos);
    }

    /** Who settled whose envelope it is and on what ground; empty where no person named a voter. */
    @Transactional(readOnly = true)
    public Optional<VoterChoice> choice(EnvelopeKey key) {
        return links.choice(key);
    }
}
