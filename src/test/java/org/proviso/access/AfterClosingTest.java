package org.proviso.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.proviso.core.ElectionId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionService;
import org.proviso.journey.Primary;
import org.proviso.review.news.NewListResult;
import org.springframework.transaction.support.TransactionTemplate;

/** Once an election is closed, no act of any service about it is accepted: each is tried as each role. */
class AfterClosingTest {

    /** Acts about the office, one that makes the look-up anew from what stands, and two people's way to reopen the canvass. */
    private static final Set<String> OF_THE_OFFICE =
            Set.of("UserService", "OfficeClockService", "ElectionLoadService", "StatusService", "ReopenCanvassService");

    /** Acts that the sample arguments bring far enough to meet the closing, where nothing else stands in their way. */
    private static final Set<String> SAY_WHY = Set.of(
            "ReceivingService.receive(ReceiveEnvelope)",
            "KeyingService.saveDraft(SaveKeyingDraft)",
            "KeyingService.handIn(FinishKeying)",
            "NumberCheckService.confirm(ConfirmNumber)",
            "NumberCheckService.correct(CorrectReceipt)",
            "NoteService.write(EnvelopeKey, String)",
            "SavedViewService.save(QueueFilter, String)",
            "CureService.record(RecordCure)",
            "EnvelopeCorrectionService.correct(CorrectEnvelope)",
            "LaterFileService.load(ElectionId, Path)",
            "TransmittalService.record(RecordTransmittal)",
            "TransmittalService.correct(int, int, RecordTransmittal)",
            "CourtOrderRecordService.record(RecordCourtOrder)",
            "CourtOrderRecordService.change(ElectionId, int, int, Status)",
            "NewerFileService.load(ElectionId, SnapshotKind, Path)",
            "NewerFileService.mend(MendRow)",
            "NewerFileService.refuseFile(ElectionId, int, String)",
            "NewerFileService.useWithoutAside(ElectionId, int, String, String)",
            "RulingService.record(SignRuling)",
            "RuleChangeService.putInForce(PutRulesInForce)",
            "ReleaseService.recordOtherBallotsComplete(ElectionId)",
            "ReleaseService.takeBackOtherBallotsComplete(ElectionId, String)",
            "ReleaseService.makeBatch(ElectionId, Set, String)");

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    @OnADatabase
    void nothing_about_a_closed_election_changes(TestOffice office) {
        Primary primary = Primary.loaded(office);
        Arrays.stream(Role.values())
                .filter(role -> role != Role.PUBLIC)
                .forEach(role -> Staff.hire(office, "the_" + role.code(), role));
        office.inTransaction(() -> {
            office.the(ElectionService.class).close(new ElectionId(Primary.ID));
            return true;
        });
        SampleArguments there = SampleArguments.of(primary.envelope("in_order"));
        Set<String> accepted = new TreeSet<>();
        Set<String> saidWhy = new TreeSet<>();
        ServiceMethods.all().forEach((name, method) -> {
            if (OF_THE_OFFICE.contains(method.getDeclaringClass().getSimpleName())) {
                return;
            }
            for (Role role : Role.values()) {
                Object came = call(office, method, role, there);
                if (came instanceof ActResult.Accepted<?> || came instanceof NewListResult.InUse) {
                    accepted.add(name);
                }
                if (saysClosed(came)) {
                    saidWhy.add(name);
                }
            }
        });
        assertThat(accepted).isEmpty();
        assertThat(saidWhy).containsAll(SAY_WHY);
    }

    private static boolean saysClosed(@Nullable Object came) {
        if (came instanceof NewListResult.Refused list) {
            return list.refusal().why() == Why.ELECTION_CLOSED;
        }
        return came instanceof ActResult.Refused<?> refused
                && refused.refusals().stream().map(Refusal::why).anyMatch(why -> why == Why.ELECTION_CLOSED);
    }

    /** What a call comes to, or null where it throws; nothing stays. */
    private static @Nullable Object call(TestOffice office, Method method, Role role, SampleArguments arguments) {
        Staff.signOut();
        if (role != Role.PUBLIC) {
            Staff.signIn("the_" + role.code());
        }
        Object service = office.the(method.getDeclaringClass());
        Object[] values = arguments.of(method);
        return office.the(TransactionTemplate.class).execute(attempt -> {
            attempt.setRollbackOnly();
            try {
                return method.invoke(service, values);
            } catch (InvocationTargetException e) {
                return null;
            } catch (IllegalAccessException e) {
                throw new IllegalStateException(e);
            }
        });
    }
}
