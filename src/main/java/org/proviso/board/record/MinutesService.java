package org.proviso.board.record;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.access.StaffList;
import org.proviso.board.AgendaItem;
import org.proviso.board.AgendaStore;
import org.proviso.board.BoardClock;
import org.proviso.board.BoardMotion;
import org.proviso.board.BoardSession;
import org.proviso.board.MemberStore;
import org.proviso.board.MotionEnvelope;
import org.proviso.board.MotionStore;
import org.proviso.board.SessionKey;
import org.proviso.board.SessionMember;
import org.proviso.board.SessionStore;
import org.proviso.board.motion.VoteStore;
import org.proviso.core.Election;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.rules.Reason;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.decide.SentBackCases;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Draws up the record of a session. Members act in public and are named (common practice); what they wrote about a
 * voter is shown to those who may see whole cases only.
 */
@Service
public class MinutesService {

    private final SessionStore sessions;
    private final MemberStore members;
    private final AgendaStore agenda;
    private final MotionStore motions;
    private final VoteStore votes;
    private final AccessService access;
    private final StaffList staff;
    private final BoardClock clock;
    private final LedgerService ledger;
    private final SentBackCases returned;

    MinutesService(
            SessionStore sessions,
            MemberStore members,
            AgendaStore agenda,
            MotionStore motions,
            VoteStore votes,
            AccessService access,
            StaffList staff,
            BoardClock clock,
            LedgerService ledger,
            SentBackCases returned) {
        this.returned = returned;
        this.sessions = sessions;
        this.members = members;
        this.agenda = agenda;
        this.motions = motions;
        this.votes = votes;
        this.access = access;
        this.staff = staff;
        this.clock = clock;
        this.ledger = ledger;
    }

    /** The record as it stands now; {@link IllegalArgumentException} where there is no such session. */
    @Transactional(readOnly = true)
    public Minutes minutes(SessionKey key) {
        access.demand(Permission.READ_REDACTED_CASES);
        BoardSession session = sessions.find(key).orElseThrow(() -> SessionStore.unknown(key));
        Election election = clock.electionAsOfNow(key.electionId()).election();
        ZoneId zone = election.zone();
        return new Minutes(
                key,
                session.body(),
                election.name(),
                session.place(),
                session.calledFor(),
                local(session.openedAt(), zone),
                local(session.closedAt(), zone),
                session.body().seats(election).members(),
                session.quorum(),
                reopenings(key, zone),
                attendance(key, zone),
                members.keepers(key).stream()
                        .map(keeper -> new Minutes.Keeper(
                                name(keeper.userName()), LocalDateTime.ofInstant(keeper.beganAt(), zone)))
                        .toList(),
                recusals(key, zone),
                pulledOut(key),
                sentBack(session, zone),
                motions.all(key).stream().map(motion -> moved(motion, zone)).toList(),
                ledger.head(LedgerChain.of(key.electionId())));
    }

    private List<Minutes.Reopened> reopenings(SessionKey key, ZoneId zone) {
        return sessions.reopenings(key).stream()
                .map(reopening -> new Minutes.Reopened(
                        LocalDateTime.ofInstant(reopening.closedAt(), zone),
                        LocalDateTime.ofInstant(reopening.reopenedAt(), zone),
                        name(reopening.reopenedBy()),
                        forDeciders(reopening.because())))
                .toList();
    }

    private List<Minutes.Attendance> attendance(SessionKey key, ZoneId zone) {
        return members.all(key).stream()
                .map(member -> new Minutes.Attendance(
                        name(member.userName()),
                        LocalDateTime.ofInstant(member.arrivedAt(), zone),
                        local(member.leftAt(), zone)))
                .toList();
    }

    private List<Minutes.RecusedMember> recusals(SessionKey key, ZoneId zone) {
        return members.recusals(key).stream()
                .map(recusal -> new Minutes.RecusedMember(
                        name(recusal.userName()),
                        recusal.envelopeNo(),
                        forDeciders(recusal.ground()),
                        LocalDateTime.ofInstant(recusal.recordedAt(), zone)))
                .toList();
    }

    private List<Minutes.RemovedFromGroup> pulledOut(SessionKey key) {
        return agenda.all(key).stream()
                .filter(item -> item.pulledOutBy() != null)
                .map(item -> new Minutes.RemovedFromGroup(item.envelopeNo(), name(new UserName(item.pulledOutBy()))))
                .toList();
    }

    /** Envelopes of the agenda that somebody who sat in the session sent back while it was open. */
    private List<Minutes.SentBack> sentBack(BoardSession session, ZoneId zone) {
        Instant opened = session.openedAt();
        if (opened == null) {
            return List.of();
        }
        Set<EnvelopeNumber> listed =
                agenda.all(session.key()).stream().map(AgendaItem::envelopeNo).collect(Collectors.toSet());
        Set<UserName> sat =
                members.all(session.key()).stream().map(SessionMember::userName).collect(Collectors.toSet());
        return returned.of(session.key().electionId()).stream()
                .filter(back -> listed.contains(back.envelopeNo()) && sat.contains(back.by()))
                .filter(back -> !back.at().isBefore(opened)
                        && (session.closedAt() == null || !back.at().isAfter(session.closedAt())))
                .map(back -> new Minutes.SentBack(
                        back.envelopeNo(),
                        name(back.by()),
                        LocalDateTime.ofInstant(back.at(), zone),
                        forDeciders(back.note())))
                .toList();
    }

    private Minutes.MotionEntry moved(BoardMotion motion, ZoneId zone) {
        return new Minutes.MotionEntry(
                motion.key(),
                motion.kind(),
                motion.putNos(),
                motion.reasons().stream().map(Reason::words).toList(),
                motion.legalReference(),
                forDeciders(motion.because()),
                motion.against().stream().map(MotionEnvelope::spoken).toList(),
                name(motion.movedBy()),
                motion.secondedBy() == null ? "" : name(motion.secondedBy()),
                motion.recordedBy() == null ? "" : name(motion.recordedBy()),
                motion.secondRecordedBy() == null ? "" : name(motion.secondRecordedBy()),
                votes.all(motion.key()).stream()
                        .map(vote -> new Minutes.VoteEntry(
                                name(vote.userName()),
                                vote.vote(),
                                vote.isByAnother() ? name(new UserName(vote.notedBy())) : "",
                                vote.confirmed()))
                        .toList(),
                motion.words() == null ? "" : motion.words(),
                local(motion.endedAt(), zone));
    }

    private String forDeciders(String text) {
        return access.isPermitted(Permission.SEE_WHOLE_CASE) ? text : "";
    }

    private String name(UserName userName) {
        return staff.user(userName).map(OfficeUser::fullName).orElse(userName.value());
    }

    private static @Nullable LocalDateTime local(@Nullable Instant moment, ZoneId zone) {
        return moment == null ? null : LocalDateTime.ofInstant(moment, zone);
    }
}
