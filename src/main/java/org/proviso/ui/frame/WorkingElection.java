package org.proviso.ui.frame;

import com.vaadin.flow.spring.annotation.SpringComponent;
import com.vaadin.flow.spring.annotation.VaadinSessionScope;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;

/** What the signed-in person works with: the current election and the county's time. */
@SpringComponent
@VaadinSessionScope
public class WorkingElection {

    private final OfficeElections elections;
    private final Clock clock;
    private @Nullable ElectionId chosen;

    WorkingElection(OfficeElections elections, Clock clock) {
        this.elections = elections;
        this.clock = clock;
    }

    /** The current election: the one chosen, or else the newest. Empty when none is loaded. */
    public Optional<ElectionLine> election() {
        List<ElectionLine> all = elections.all();
        return all.stream()
                .filter(line -> line.id().equals(chosen))
                .findFirst()
                .or(() -> all.stream().findFirst());
    }

    /** The id of the current election. Pages check {@link #election()} first. */
    public ElectionId electionId() {
        return election().orElseThrow(NoElectionException::new).id();
    }

    /** Now, on the county's clock. */
    public LocalDateTime now() {
        return LocalDateTime.ofInstant(
                clock.instant(),
                election().orElseThrow(NoElectionException::new).zone());
    }

    /** Switches to another election. */
    public void choose(ElectionId electionId) {
        chosen = electionId;
    }

    List<ElectionLine> all() {
        return elections.all();
    }

    String demonstration() {
        return elections.demonstration();
    }
}
