package org.proviso.review;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Cases: where each stands, and who has it. */
@Service
@BetweenRooms
public class CaseService {

    private final CaseStore cases;

    CaseService(CaseStore cases) {
        this.cases = cases;
    }

    @Transactional(readOnly = true)
    public Optional<EnvelopeCase> find(EnvelopeKey key) {
        return cases.find(key);
    }

    /** Those of these cases that there are, by envelope number. */
    @Transactional(readOnly = true)
    public Map<EnvelopeNumber, EnvelopeCase> find(ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        return cases.find(electionId, envelopeNos);
    }

    /** Every case of an election, by envelope number. */
    @Transactional(readOnly = true)
    public List<EnvelopeCase> all(ElectionId electionId) {
        return cases.all(electionId);
    }

    /** A page of the cases of an election by envelope number. */
    @Transactional(readOnly = true)
    public List<EnvelopeCase> page(ElectionId electionId, int offset, int limit) {
        return cases.page(electionId, offset, limit);
    }

    @Transactional(readOnly = true)
    public int count(ElectionId electionId) {
        return cases.count(electionId);
    }

    @Transactional(readOnly = true)
    public List<EnvelopeCase> inState(ElectionId electionId, CaseState state) {
        return cases.inState(electionId, state);
    }
}
