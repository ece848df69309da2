package org.proviso.review.acts;

import java.util.List;
import java.util.Map;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.EnvelopeKey;
import org.proviso.review.CaseActSteps;
import org.proviso.review.facts.ResearchRequest;
import org.proviso.review.facts.ResearchStore;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Questions put to somebody about a case: another office, a poll worker, a colleague. They change no fact by themselves. */
@Service
public class ResearchService {

    private final CaseActSteps desk;
    private final ResearchStore requests;
    private final AccessService access;

    ResearchService(CaseActSteps desk, ResearchStore requests, AccessService access) {
        this.desk = desk;
        this.requests = requests;
        this.access = access;
    }

    @Transactional(readOnly = true)
    public List<ResearchRequest> of(EnvelopeKey key) {
        return requests.of(key);
    }

    /** Asks something; the number of the request. */
    @Transactional
    public int ask(EnvelopeKey key, String asked) {
        OfficeUser user = access.demand(Permission.SEARCH);
        desk.lock(key);
        int number = requests.insert(key, given(asked), user.userName());
        desk.record(key, user.actor(), "research_asked", Map.of("asked", desk.hidden(key, asked), "request", number));
        return number;
    }

    /** Notes what came back. */
    @Transactional
    public void recordAnswer(EnvelopeKey key, int number, int version, String found) {
        OfficeUser user = access.demand(Permission.SEARCH);
        desk.lock(key);
        requests.found(key, number, version, given(found), user.userName());
        desk.record(
                key, user.actor(), "research_answered", Map.of("found", desk.hidden(key, found), "request", number));
    }

    private static String given(String text) {
        if (text.isBlank() || text.length() > 4_000) {
            throw new IllegalArgumentException("Write between 1 and 4,000 characters.");
        }
        return text;
    }
}
