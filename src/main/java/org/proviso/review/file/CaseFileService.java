package org.proviso.review.file;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.access.StaffList;
import org.proviso.core.CourtOrder;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.explain.LawLine;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.core.adjudication.finding.Records;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Rules;
import org.proviso.election.ElectionService;
import org.proviso.election.RecordedCourtOrder;
import org.proviso.election.RulesService;
import org.proviso.election.orders.CourtOrderService;
import org.proviso.review.CaseService;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.VoterChoice;
import org.proviso.review.assess.SecondLooks;
import org.proviso.review.facts.CaseRecordsService;
import org.proviso.review.facts.LinkStore;
import org.proviso.review.facts.VoterGroups;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Opens a case for reading: for reviewers, and for the deciding body with the whole case before it. To whoever may look a
 * second time at its signature it is as if nobody had looked ({@link SecondLooks}).
 */
@Service
public class CaseFileService {

    private final CaseService cases;
    private final CaseRecordsService records;
    private final CaseworkReader work;
    private final SecondLooks looks;
    private final PossibleVoters voters;
    private final LinkStore links;
    private final VoterGroups groups;
    private final ElectionService elections;
    private final RulesService rules;
    private final CourtOrderService orders;
    private final CasePictures pictures;
    private final CaseFileStore store;
    private final AccessService access;
    private final StaffList staff;
    private final ProtectedAddressLog views;
    private final Clock clock;

    CaseFileService(
            CaseService cases,
            CaseRecordsService records,
            CaseworkReader work,
            SecondLooks looks,
            PossibleVoters voters,
            LinkStore links,
            VoterGroups groups,
            ElectionService elections,
            RulesService rules,
            CourtOrderService orders,
            CasePictures pictures,
            CaseFileStore store,
            AccessService access,
            StaffList staff,
            ProtectedAddressLog views,
            Clock clock) {
        this.cases = cases;
        this.records = records;
        this.work = work;
        this.looks = looks;
        this.voters = voters;
        this.links = links;
        this.groups = groups;
        this.elections = elections;
        this.rules = rules;
        this.orders = orders;
        this.pictures = pictures;
        this.store = store;
        this.access = access;
        this.staff = staff;
        this.views = views;
        this.clock = clock;
    }

    /**
     * The case with everything around it, as it is in this moment; empty where there is none. Where it shows the protected
     * address of its voter, that it was seen is an act.
     */
    @Transactional(readOnly = true)
    public Optional<CaseFile> open(EnvelopeKey key) {
        OfficeUser reader = reader();
        Optional<CaseFile> file = cases.find(key).map(now -> file(now, reader));
        if (file.map(CaseFile::showsProtectedAddress).orElse(false)) {
            views.note(key);
        }
        return file;
    }

    /** Whether the law wants a look at the signature before whoever looks knows whose it is, and there is one to look at. */
    @Transactional(readOnly = true)
    public boolean signatureComesFirst(EnvelopeKey key) {
        CaseReport report = looks.report(key, reader());
        return isBlind(key, report)
                && report.recommendation() != Recommendation.ADMINISTRATIVE_END
                && report.voter().isPresent()
                && pictures.hasSignature(key);
    }

    private OfficeUser reader() {
        boolean reviews = access.isPermitted(Permission.PROPOSE) || access.isPermitted(Permission.SECOND_REVIEW);
        return access.demand(reviews ? Permission.PROPOSE : Permission.SEE_WHOLE_CASE);
    }

    private CaseFile file(EnvelopeCase now, OfficeUser reader) {
        EnvelopeKey key = now.key();
        ZoneId county = elections.zone(key.electionId());
        boolean blind = looks.isBlind(key, reader);
        CaseReport report = looks.report(key, reader);
        Records all = records.of(key.electionId());
        return new CaseFile(
                now,
                holding(now, reader, county),
                report,
                LawLine.all(report),
                around(key, report, all, county),
                work.of(
                        key,
                        new CaseworkReader.Known(reader, blind, report.voter().isPresent() && isBlind(key, report)),
                        county),
                ordersAbout(key));
    }

    private CaseFile.Assignment holding(EnvelopeCase now, OfficeUser reader, ZoneId county) {
        UserName by = now.takenBy();
        return by == null
                ? new CaseFile.Assignment("", Optional.empty(), false)
                : new CaseFile.Assignment(name(by), store.takenAt(now.key(), county), by.equals(reader.userName()));
    }

    private CaseFile.SurroundingRecords around(EnvelopeKey key, CaseReport report, Records all, ZoneId county) {
        List<EnvelopeCase> others = List.copyOf(cases.find(
                        key.electionId(),
                        groups.others(key).stream().map(EnvelopeKey::envelopeNo).toList())
                .values());
        DeadlineBook book = rules.book(key.electionId());
        return new CaseFile.SurroundingRecords(
                voters.of(key, report, all),
                links.choice(key).map(choice -> chosen(choice, county)),
                TimeLine.of(report, all, book),
                CaseAddress.of(report, all),
                others,
                ContestsAtStake.of(report, all),
                book.of(Rules.DECISION).or(() -> book.of(Rules.CERTIFICATION)).map(Deadline::lastMoment),
                pictures.of(key, report),
                LocalDateTime.ofInstant(clock.instant(), county),
                county);
    }

    private String name(UserName userName) {
        return staff.user(userName).map(OfficeUser::fullName).orElse(userName.value());
    }

    private CaseFile.Choice chosen(VoterChoice choice, ZoneId county) {
        return new CaseFile.Choice(name(choice.by()), LocalDateTime.ofInstant(choice.at(), county), choice.ground());
    }

    private boolean isBlind(EnvelopeKey key, CaseReport report) {
        SignatureComparisonFact seen = report.presumed().facts().one(Fact.SIGNATURE_COMPARISON);
        return (seen == null || seen == SignatureComparisonFact.NOT_YET)
                && rules.book(key.electionId()).pack().isYes(Rules.SIGNATURE_BLIND);
    }

    private List<RecordedCourtOrder> ordersAbout(EnvelopeKey key) {
        return orders.all(key.electionId()).stream()
                .filter(recorded -> recorded.order().kind() != CourtOrder.Kind.EXTEND
                        && recorded.order().isAbout(key.envelopeNo()))
                .toList();
    }
}
