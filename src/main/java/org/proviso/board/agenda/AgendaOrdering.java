package org.proviso.board.agenda;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.proviso.board.AgendaItem;
import org.proviso.board.AgendaStore;
import org.proviso.board.BoardClock;
import org.proviso.board.ProposalForDecision;
import org.proviso.board.ProposalsForDecision;
import org.proviso.board.SessionKey;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.review.CaseState;
import org.proviso.review.EnvelopeCase;
import org.springframework.stereotype.Component;

/** Finds the place of envelopes on an agenda: by group, then by envelope number, after those that are there. */
@Component
class AgendaOrdering {

    private final AgendaStore agenda;
    private final ProposalsForDecision proposals;
    private final BoardClock clock;

    AgendaOrdering(AgendaStore agenda, ProposalsForDecision proposals, BoardClock clock) {
        this.agenda = agenda;
        this.proposals = proposals;
        this.clock = clock;
    }

    /** The items to write: new ones, and those of the agenda that are no longer as proposed. */
    List<AgendaItem> place(SessionKey key, List<EnvelopeCase> wanted) {
        List<AgendaItem> there = agenda.all(key);
        Map<EnvelopeNumber, ProposalForDecision> proposed = proposed(key.electionId(), wanted);
        ConsentGroups groups = new ConsentGroups(there);
        ResolvedPack pack = clock.electionAsOfNow(key.electionId()).book().pack();
        groups.add(List.copyOf(proposed.values()), pack::precedence);
        List<AgendaItem> items = new ArrayList<>();
        for (EnvelopeCase envelopeCase : wanted) {
            EnvelopeNumber envelope = envelopeCase.key().envelopeNo();
            AgendaItem item = item(envelope, proposed.get(envelope), groups);
            if (there.stream().noneMatch(old -> old.envelopeNo().equals(envelope) && same(old, item))) {
                items.add(item);
            }
        }
        items.sort(Comparator.comparing(AgendaOrdering::order).thenComparing(AgendaItem::envelopeNo));
        return numbered(items, there.stream().mapToInt(AgendaItem::place).max().orElse(0));
    }

    private static AgendaItem item(
            EnvelopeNumber envelope, @Nullable ProposalForDecision proposed, ConsentGroups groups) {
        return proposed == null
                ? new AgendaItem(envelope, 0, null, null, null, null, 0)
                : new AgendaItem(
                        envelope,
                        0,
                        proposed.outcome(),
                        proposed.primaryReason(),
                        groups.groupNumber(proposed),
                        null,
                        0);
    }

    /** Those that stand alone come last. */
    private static int order(AgendaItem item) {
        return item.group() == null ? Integer.MAX_VALUE : item.group();
    }

    private static boolean same(AgendaItem old, AgendaItem item) {
        return old.proposed() == item.proposed()
                && old.primaryReason() == item.primaryReason()
                && Objects.equals(old.group(), item.group());
    }

    private static List<AgendaItem> numbered(List<AgendaItem> items, int after) {
        List<AgendaItem> numbered = new ArrayList<>();
        for (AgendaItem item : items) {
            numbered.add(new AgendaItem(
                    item.envelopeNo(),
                    after + numbered.size() + 1,
                    item.proposed(),
                    item.primaryReason(),
                    item.group(),
                    null,
                    0));
        }
        return numbered;
    }

    /** What is proposed of those that are ready; a decided one is there to be opened again, whatever was proposed. */
    private Map<EnvelopeNumber, ProposalForDecision> proposed(ElectionId electionId, List<EnvelopeCase> wanted) {
        return proposals.find(
                electionId,
                wanted.stream()
                        .filter(envelopeCase -> envelopeCase.state() == CaseState.READY)
                        .map(envelopeCase -> envelopeCase.key().envelopeNo())
                        .toList());
    }
}
