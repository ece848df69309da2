package org.proviso.ui.frame;

import com.vaadin.flow.spring.annotation.SpringComponent;
import com.vaadin.flow.spring.annotation.VaadinSessionScope;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a person at work has in front of them: the election they work on, and the county's time. */
@SpringComponent
@VaadinSessionScope
public class WorkingElection {

    private final OfficeElections elections;
    private final Clock clock;
    private @Nullable String chosen;

    WorkingElection(OfficeElections elections, Clock clock) {
        this.elections = elections;
        this.clock = clock;
    }

    /** The election worked on: the one chosen, else the newest; empty while the office holds none. */
    public Optional<ElectionLine> election() {
        List<ElectionLine> all = elections.all();
        return all.stream()
                .filter(line -> line.id().equals(chosen))
                .findFirst()
                .or(() -> all.stream().findFirst());
    }

    /** The id of the election worked on, where there is one: pages ask {@link #election()} first. */
    public String electionId() {
        return election().orElseThrow(NoElectionException::new).id();
    }

    /** Now, on the county's clock. */
    public LocalDateTime now() {
        return LocalDateTime.ofInstant(
                clock.instant(),
                election().orElseThrow(NoElectionException::new).zone());
    }

    /** Works on another election from now on. */
    public void choose(String electionId) {
        chosen = electionId;
    }

    List<ElectionLine> all() {
        return elections.all();
    }

    String demonstration() {
        return elections.demonstration();
    }
}
