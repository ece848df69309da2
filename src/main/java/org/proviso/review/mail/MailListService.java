package org.proviso.review.mail;

import jakarta.validation.Valid;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.access.StaffList;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.election.ElectionService;
import org.proviso.review.CaseActSteps;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/**
 * The lists for the mail-ballot desk: sending one is an act, and so is recording what the desk answered. An answer that the
 * mail ballot counted already is a fact of the case from then on.
 */
@Service
@Validated
public class MailListService {

    private final MailDeskWork work;
    private final MailListStore lists;
    private final DeskAnswerFacts facts;
    private final MailLedger ledger;
    private final CaseActSteps steps;
    private final ElectionService elections;
    private final AccessService access;
    private final StaffList staff;
    private final ActDoor door;

    MailListService(
            MailDeskWork work,
            MailListStore lists,
            DeskAnswerFacts facts,
            MailLedger ledger,
            CaseActSteps steps,
            ElectionService elections,
            AccessService access,
            StaffList staff,
            ActDoor door) {
        this.work = work;
        this.lists = lists;
        this.facts = facts;
        this.ledger = ledger;
        this.steps = steps;
        this.elections = elections;
        this.access = access;
        this.staff = staff;
        this.door = door;
    }

    /** Whether the rules of this election ask anything of the mail desk. */
    @Transactional(readOnly = true)
    public boolean isAsked(ElectionId electionId) {
        access.demand(Permission.TELL_MAIL_DESK);
        return work.isAsked(electionId);
    }

    /** How many lines the desk was not told yet, or has not answered. */
    @Transactional(readOnly = true)
    public int open(ElectionId electionId) {
        access.demand(Permission.TELL_MAIL_DESK);
        return work.open(electionId);
    }

    /** The lines of the next list, withdrawals first. */
    @Transactional(readOnly = true)
    public List<MailLine> next(ElectionId electionId) {
        access.demand(Permission.TELL_MAIL_DESK);
        return work.next(electionId);
    }

    /** The lists that were sent, the first one first. */
    @Transactional(readOnly = true)
    public List<MailList> sent(ElectionId electionId) {
        access.demand(Permission.TELL_MAIL_DESK);
        Map<Integer, List<SentLine>> byList = new TreeMap<>();
        lists.all(electionId)
                .forEach(line -> byList.computeIfAbsent(line.listNo(), any -> new ArrayList<>())
                        .add(line));
        return byList.values().stream().map(this::list).toList();
    }

    private MailList list(List<SentLine> lines) {
        SentLine first = lines.get(0);
        String by = staff.user(first.sentBy())
                .map(OfficeUser::fullName)
                .orElse(first.sentBy().value());
        return new MailList(first.listNo(), by, first.sentAt(), List.copyOf(lines));
    }

    /** A list that was sent, as a file for the desk; empty where there is none of that number. */
    @Transactional(readOnly = true)
    public Optional<String> file(ElectionId electionId, int listNo) {
        return sent(electionId).stream()
                .filter(list -> list.number() == listNo)
                .findFirst()
                .map(MailListFile::of);
    }

    /** Sends the lines that were seen under the next number; where they are others meanwhile, the page was stale. */
    @Transactional
    public ActResult<Integer> send(ElectionId electionId, List<MailLine> seen) {
        ActDoor.Permitted permitted = door.demand(Permission.TELL_MAIL_DESK);
        return permitted
                .lock(() -> unchanged(electionId, seen))
                .refuse(lines -> elections.closed(electionId))
                .refuse(lines -> Refusal.when(
                        lines.isEmpty(), Why.NOTHING_NEW, "There is nothing that the mail desk was not told already."))
                .save(lines -> insert(electionId, lines, permitted.user()))
                .record(ledger::sent)
                .map(made -> made.get(0).listNo());
    }

    private List<MailLine> unchanged(ElectionId electionId, List<MailLine> seen) {
        List<MailLine> now = work.next(electionId);
        if (!now.equals(seen)) {
            throw new OptimisticLockingFailureException("The list for the mail desk has changed since you saw it.");
        }
        return now;
    }

    private List<SentLine> insert(ElectionId electionId, List<MailLine> lines, OfficeUser by) {
        int listNo = 1
                + lists.all(electionId).stream()
                        .mapToInt(SentLine::listNo)
                        .max()
                        .orElse(0);
        lists.insert(listNo, lines, by.userName());
        return lists.all(electionId).stream()
                .filter(line -> line.listNo() == listNo)
                .toList();
    }

    /** What the desk answered to lines of a list that it had not answered; the number of lines. */
    @Transactional
    public ActResult<Integer> record(@Valid RecordDeskAnswers command) {
        ActDoor.Permitted permitted = door.demand(Permission.TELL_MAIL_DESK);
        Map<SentLine, GivenAnswer> given = new LinkedHashMap<>();
        return permitted
                .lock(() -> unanswered(command))
                .refuse(lines -> elections.closed(command.electionId()))
                .refuse(lines ->
                        Refusal.when(lines.isEmpty(), Why.NOTHING_NEW, "Choose the answer to at least one line."))
                .refuse(lines -> lines.stream()
                        .flatMap(line -> wrongKind(line, command.answers().get(line.lineNo())).stream())
                        .findFirst())
                .refuseAll(
                        lines -> wrong(command.electionId(), lines.get(0), command.answeredOn(), command.answeredBy()))
                .save(lines -> {
                    lines.forEach(line -> given.put(
                            line,
                            answer(
                                    command.answers().get(line.lineNo()),
                                    command.answeredOn(),
                                    command.answeredBy(),
                                    "",
                                    permitted.user())));
                    return save(given, permitted.user());
                })
                .andThen(facts::recheck)
                .record(ledger::answered)
                .map(done -> given.size());
    }

    /** Another answer to a line than was recorded, with the reason. */
    @Transactional
    public ActResult<Integer> correct(@Valid CorrectDeskAnswer command) {
        ActDoor.Permitted permitted = door.demand(Permission.TELL_MAIL_DESK);
        return permitted
                .lock(() -> asSeen(command))
                .refuse(line -> elections.closed(command.electionId()))
                .refuse(line -> wrongKind(line, command.answer()))
                .refuseAll(line -> wrong(command.electionId(), line, command.answeredOn(), command.answeredBy()))
                .refuse(line -> command.because().isBlank()
                        ? Optional.of(
                                Refusal.at("because", Why.NO_REASON, "Required. Enter why the answer is corrected."))
                        : Optional.empty())
                .save(line -> save(
                        Map.of(
                                line,
                                answer(
                                        command.answer(),
                                        command.answeredOn(),
                                        command.answeredBy(),
                                        command.because().strip(),
                                        permitted.user())),
                        permitted.user()))
                .andThen(facts::recheck)
                .record(ledger::corrected)
                .map(done -> command.lineNo());
    }

    private DeskAnswerFacts.Saved save(Map<SentLine, GivenAnswer> given, OfficeUser by) {
        given.forEach(lists::answer);
        return facts.save(given, by);
    }

    private static GivenAnswer answer(
            @Nullable DeskAnswer answer, @Nullable LocalDate on, String by, String because, OfficeUser user) {
        if (answer == null || on == null) {
            throw new IllegalStateException("what is missing was refused");
        }
        return new GivenAnswer(0, answer, on, by.strip(), because, user.userName());
    }

    /** The lines that are to be answered, their cases held; one that has an answer already was changed meanwhile. */
    private List<SentLine> unanswered(RecordDeskAnswers command) {
        List<SentLine> lines = lines(command.electionId(), command.listNo()).stream()
                .filter(line -> command.answers().containsKey(line.lineNo()))
                .toList();
        hold(lines);
        List<SentLine> now = lines(command.electionId(), command.listNo()).stream()
                .filter(line -> command.answers().containsKey(line.lineNo()))
                .toList();
        if (now.stream().anyMatch(SentLine::isAnswered)) {
            throw new OptimisticLockingFailureException("An answer to a line of this list was recorded meanwhile.");
        }
        return now;
    }

    private SentLine asSeen(CorrectDeskAnswer command) {
        hold(List.of(line(command)));
        SentLine now = line(command);
        if (now.seenAnswer() != command.seen() || !now.isAnswered()) {
            throw new OptimisticLockingFailureException("The answer to this line was changed meanwhile.");
        }
        return now;
    }

    private SentLine line(CorrectDeskAnswer command) {
        return lines(command.electionId(), command.listNo()).stream()
                .filter(line -> line.lineNo() == command.lineNo())
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "List " + command.listNo() + " has no line " + command.lineNo() + "."));
    }

    private List<SentLine> lines(ElectionId electionId, int listNo) {
        return lists.all(electionId).stream()
                .filter(line -> line.listNo() == listNo)
                .toList();
    }

    private void hold(List<SentLine> lines) {
        TreeSet<EnvelopeKey> keys = new TreeSet<>();
        lines.forEach(line -> keys.add(line.line().key()));
        keys.forEach(steps::lock);
    }

    private static Optional<Refusal> wrongKind(SentLine line, @Nullable DeskAnswer answer) {
        MailLine.Kind kind = line.line().kind();
        return answer != null && DeskAnswer.to(kind).contains(answer)
                ? Optional.empty()
                : Optional.of(Refusal.of(Why.MISTYPED, "Line " + line.lineNo() + " cannot have this answer."));
    }

    private List<Refusal> wrong(ElectionId electionId, SentLine line, @Nullable LocalDate on, String by) {
        List<Refusal> wrong = new ArrayList<>();
        LocalDate sent = line.sentAt().atZone(elections.zone(electionId)).toLocalDate();
        if (on == null) {
            wrong.add(Refusal.at("answeredOn", Why.MISTYPED, "Required. Enter the day the mail desk answered."));
        } else if (on.isAfter(steps.now(electionId).toLocalDate())) {
            wrong.add(Refusal.at("answeredOn", Why.MOMENT_NOT_POSSIBLE, DateWords.date(on) + " has not come yet."));
        } else if (on.isBefore(sent)) {
            wrong.add(Refusal.at(
                    "answeredOn", Why.MOMENT_NOT_POSSIBLE, "The list was sent only on " + DateWords.date(sent) + "."));
        }
        if (by.isBlank()) {
            wrong.add(Refusal.at("answeredBy", Why.NO_REASON, "Required. Enter who answered at the mail desk."));
        }
        return wrong;
    }
}
