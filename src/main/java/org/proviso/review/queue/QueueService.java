package org.proviso.review.queue;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.review.CaseVersion;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.acts.CaseAssignmentService;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What waits for a reviewer, and the next case to take: the voter's running clock first, then what changed, then by age. */
@Service
public class QueueService {

    private static final int TRIES = 8;

    private final QueueStore queue;
    private final CaseAssignmentService cases;
    private final AccessService access;

    QueueService(QueueStore queue, CaseAssignmentService cases, AccessService access) {
        this.queue = queue;
        this.cases = cases;
        this.access = access;
    }

    /** A page of the queue. */
    @Transactional(readOnly = true)
    public List<QueueRow> page(QueueFilter filter, int offset, int limit) {
        access.demand(Permission.SEARCH);
        return queue.page(filter, offset, limit);
    }

    /** How many cases match a filter. */
    @Transactional(readOnly = true)
    public int count(QueueFilter filter) {
        access.demand(Permission.SEARCH);
        return queue.count(filter);
    }

    /** Every voting location with envelopes. */
    @Transactional(readOnly = true)
    public List<String> locations(ElectionId electionId) {
        access.demand(Permission.SEARCH);
        return queue.locations(electionId);
    }

    /**
     * Takes the next case for whoever is signed in; empty where none waits. Those passed over are left out. Of two who
     * ask at the same moment each gets a case of their own: the act of taking is a transaction by itself.
     */
    public Optional<ActResult<EnvelopeCase>> takeNext(ElectionId electionId, Collection<EnvelopeNumber> passedOver) {
        access.demand(Permission.PROPOSE);
        Set<EnvelopeNumber> leftOut = new LinkedHashSet<>(passedOver);
        for (int i = 0; i < TRIES; i++) {
            Optional<CaseVersion> first = queue.first(electionId, leftOut);
            if (first.isEmpty()) {
                return Optional.empty();
            }
            try {
                return Optional.of(cases.take(first.get().key(), first.get().version()));
            } catch (OptimisticLockingFailureException e) {
                leftOut.add(first.get().key().envelopeNo());
            }
        }
        return Optional.empty();
    }
}
