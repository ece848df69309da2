package org.proviso.election;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.proviso.core.Election;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.OfficeElections;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** The loaded elections, as the top of every page names them. */
@Component
class HeldElections implements OfficeElections {

    private final ElectionService elections;
    private final boolean demo;

    HeldElections(ElectionService elections, @Value("${proviso.demo:false}") boolean demo) {
        this.elections = elections;
        this.demo = demo;
    }

    @Override
    public List<ElectionLine> all() {
        return elections.all().stream()
                .map(elections::find)
                .flatMap(Optional::stream)
                .map(this::line)
                .sorted(Comparator.comparing(ElectionLine::date).reversed().thenComparing(ElectionLine::id))
                .toList();
    }

    @Override
    public String demonstration() {
        return demo ? "Demonstration. The county, its people and its signatures are invented." : "";
    }

    private ElectionLine line(Election election) {
        String kind = election.kind().name().charAt(0)
                + election.kind().name().substring(1).toLowerCase(java.util.Locale.ROOT);
        return new ElectionLine(
                election.id(),
                election.jurisdiction(),
                kind,
                election.date(),
                election.zone(),
                elections.isClosed(election.id()));
    }
}
