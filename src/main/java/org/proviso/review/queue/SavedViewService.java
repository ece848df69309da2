package org.proviso.review.queue;

import java.util.List;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.election.ElectionService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Lists of cases that a person named, each person's own. They say nothing about a case and are not in the ledger; in a
 * closed election they stay as they are. Each act answers with the person's views as they are after it.
 */
@Service
public class SavedViewService {

    private static final int MOST = 30;
    private static final int LONGEST_NAME = 60;
    private static final int LONGEST_FILTER = 2_000;

    private final SavedViewStore views;
    private final ElectionService elections;
    private final AccessService access;
    private final ActDoor door;

    SavedViewService(SavedViewStore views, ElectionService elections, AccessService access, ActDoor door) {
        this.views = views;
        this.elections = elections;
        this.access = access;
        this.door = door;
    }

    /** The views of whoever is signed in, by name. */
    @Transactional(readOnly = true)
    public List<SavedView> yours(ElectionId electionId) {
        return views.of(electionId, access.demand(Permission.SEARCH).userName());
    }

    /** Keeps a list under a name. */
    @Transactional
    public ActResult<List<SavedView>> save(QueueFilter list, String name) {
        ElectionId electionId = list.electionId();
        String shown = QueueFilterText.write(list);
        return act(electionId)
                .refuse(kept -> named(kept, name, 0))
                .refuse(kept -> Refusal.when(
                        kept.size() >= MOST || shown.length() > LONGEST_FILTER,
                        Why.MISTYPED,
                        "You have " + MOST + " views. Remove one first."))
                .save(kept -> {
                    views.insert(electionId, you(), name.strip(), shown);
                    return views.of(electionId, you());
                })
                .withoutEntry();
    }

    @Transactional
    public ActResult<List<SavedView>> rename(ElectionId electionId, int viewNo, String name) {
        return act(electionId)
                .refuse(kept -> gone(kept, viewNo))
                .refuse(kept -> named(kept, name, viewNo))
                .save(kept -> {
                    views.rename(electionId, you(), viewNo, name.strip());
                    return views.of(electionId, you());
                })
                .withoutEntry();
    }

    @Transactional
    public ActResult<List<SavedView>> remove(ElectionId electionId, int viewNo) {
        return act(electionId)
                .refuse(kept -> gone(kept, viewNo))
                .save(kept -> {
                    views.remove(electionId, you(), viewNo);
                    return views.of(electionId, you());
                })
                .withoutEntry();
    }

    private ActDoor.Locked<List<SavedView>> act(ElectionId electionId) {
        ActDoor.Permitted permitted = door.demand(Permission.SEARCH);
        UserName userName = permitted.user().userName();
        return permitted
                .lock(() -> {
                    views.lock(userName);
                    return views.of(electionId, userName);
                })
                .refuse(kept -> elections.closed(electionId));
    }

    private UserName you() {
        return access.signedIn().userName();
    }

    private static Optional<Refusal> gone(List<SavedView> kept, int viewNo) {
        return kept.stream().anyMatch(view -> view.viewNo() == viewNo)
                ? Optional.empty()
                : Optional.of(Refusal.of(Why.NOTHING_NEW, "You removed this view meanwhile."));
    }

    private static Optional<Refusal> named(List<SavedView> kept, String name, int viewNo) {
        String typed = name.strip();
        if (typed.isEmpty() || typed.length() > LONGEST_NAME) {
            return Optional.of(Refusal.at("name", Why.NO_REASON, "Enter a name of up to 60 characters."));
        }
        return kept.stream()
                .filter(view -> view.viewNo() != viewNo)
                .filter(view -> view.viewName().equalsIgnoreCase(typed))
                .findFirst()
                .map(view -> Refusal.at(
                        "name", Why.NUMBER_TAKEN, "You have a view \u201C" + view.viewName() + "\u201D already."));
    }
}
