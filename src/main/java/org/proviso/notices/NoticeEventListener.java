package org.proviso.notices;

import java.util.List;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.adjudication.judging.DueAsk;
import org.proviso.election.RulesService;
import org.proviso.review.CaseChanged;
import org.proviso.review.Decision;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Keeps what is due to voters as cases move, in the transaction that moves them; the case is held by then. */
@Component
class NoticeEventListener {

    private final NoticeStore notices;
    private final CountyClock clock;
    private final RulesService rules;

    NoticeEventListener(NoticeStore notices, CountyClock clock, RulesService rules) {
        this.notices = notices;
        this.clock = clock;
        this.rules = rules;
    }

    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void caseChanged(CaseChanged news) {
        List<Notice> there = notices.of(news.key());
        RequiredNotices wanted = RequiredNotices.of(news);
        boolean apart = news.report().settled().heldApart();
        for (DueAsk due : wanted.asks()) {
            there.stream()
                    .filter(notice -> notice.asksFor(due.ask()))
                    .findFirst()
                    .ifPresentOrElse(known -> renew(known, due, apart), () -> askDue(news, due, apart));
        }
        there.stream()
                .filter(notice -> notice.kind() == NoticeKind.ASK && notice.isOpen())
                .filter(notice -> !wanted.isAsked(notice.asked()))
                .forEach(notices::withdraw);
        outcome(news, wanted, there);
    }

    private void askDue(CaseChanged news, DueAsk due, boolean apart) {
        ElectionId electionId = news.key().electionId();
        notices.insertAsk(
                news.key(), due, DueMoment.of(due.ask(), rules.book(electionId), clock.now(electionId)), apart);
    }

    /** Asked again, or for another reason: the moment it was first due stays. What went out is not changed. */
    private void renew(Notice known, DueAsk due, boolean apart) {
        boolean sameWords = known.isSent() || (!known.isWithdrawn() && known.reason() == due.reason());
        if (!sameWords || known.heldApart() != apart) {
            notices.renew(known, known.isSent() ? known.askedBecause() : due.reason(), apart);
        }
    }

    private void outcome(CaseChanged news, RequiredNotices wanted, List<Notice> there) {
        List<Notice> outcomes = there.stream()
                .filter(notice -> notice.kind() == NoticeKind.OUTCOME)
                .toList();
        Optional<Integer> standing = wanted.decision().map(Decision::number);
        outcomes.stream()
                .filter(Notice::isOpen)
                .filter(notice -> !standing.equals(Optional.of(notice.decided())))
                .forEach(notices::withdraw);
        boolean known = outcomes.stream().anyMatch(notice -> standing.equals(Optional.of(notice.decided())));
        // A voter who was told otherwise before is told of a decision to count as well.
        boolean due = wanted.losesSomething() || outcomes.stream().anyMatch(Notice::isSent);
        if (standing.isPresent() && !known && due) {
            notices.insertOutcome(
                    news.key(),
                    standing.get(),
                    clock.now(news.key().electionId()),
                    wanted.decision().orElseThrow().ballot().heldApart());
        }
    }
}
