package org.proviso.review.replay;

import static org.proviso.core.act.ActResults.accepted;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.proviso.SampleCases;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.kept.KeptAssessment;
import org.proviso.database.DatabaseKind;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionLoadService;
import org.proviso.review.AssessedPrimary;
import org.proviso.review.assess.AssessmentStore;

/**
 * Times keeping, listing and making again the assessments of the 240 cases of the general election, on both databases.
 * A command, never a test: run its main from the project's folder. An argument multiplies the cases, as copies of the
 * sample's, to show how the times grow.
 */
public final class AssessmentReplayBench {

    private static final String ID = "tamarack-general";
    private static final int ROUNDS = 3;

    private AssessmentReplayBench() {}

    public static void main(String[] arguments) {
        int copies = arguments.length == 0 ? 1 : Integer.parseInt(arguments[0]);
        SampleCases cases = SampleCases.presumed(ID).confirmed();
        for (DatabaseKind kind : DatabaseKind.values()) {
            TestOffice office = TestOffice.on(kind);
            office.empty();
            Staff.hire(office, "hugh", Role.SUPERVISOR);
            Staff.signIn("hugh");
            accepted(office.the(ElectionLoadService.class).load(Path.of("sample-cases", ID)));
            sizes(office, cases);
            for (int copy = 1; copy < copies; copy++) {
                copy(office, copy);
            }
            for (int round = 1; round <= ROUNDS; round++) {
                list(office);
                replay(office, round);
            }
        }
        System.exit(0);
    }

    private static void sizes(TestOffice office, SampleCases cases) {
        Map<EnvelopeNumber, List<KeptAssessment>> ways = AssessedPrimary.ways(cases);
        long letters = ways.values().stream()
                .flatMap(List::stream)
                .mapToLong(kept -> kept.facts().length() + kept.content().length())
                .sum();
        long start = System.nanoTime();
        office.inTransaction(() -> {
            ways.forEach((envelope, three) -> office.the(AssessmentStore.class)
                    .insert(new ElectionId(ID), Map.of(new EnvelopeKey(new ElectionId(ID), envelope), three)));
            return true;
        });
        System.out.printf(
                "%s: %d cases kept in %d ms, %d letters a case%n",
                office.kind(), ways.size(), millis(start), letters / ways.size());
    }

    /** The envelopes once more under other numbers, with their cases and assessments. */
    private static void copy(TestOffice office, int copy) {
        String suffix = "-" + copy;
        office.jdbc().sql("""
                        insert into envelope (election_id, envelope_no, receipt_no, place, source, voting_location,
                            precinct_cast, style_cast, party_ballot_cast, cast_at, extended_hours, in_line_at_close,
                            issue_reasons, id_shown, id_kind, declaration, mail_ballot_surrendered,
                            sent_here_by_official, official_note, voter_signed, mark_witness, official_signed, condition,
                            signature_image, received_at, recorded_at, ledger_salt, version)
                        select election_id, envelope_no || ?, receipt_no || ?, place, source, voting_location, precinct_cast,
                            style_cast, party_ballot_cast, cast_at, extended_hours, in_line_at_close, issue_reasons, id_shown, id_kind, declaration,
                            mail_ballot_surrendered, sent_here_by_official, official_note, voter_signed,
                            mark_witness, official_signed, condition, signature_image, received_at, recorded_at,
                            ledger_salt, version
                        from envelope where envelope_no not like '%-%-%'""").params(suffix, suffix).update();
        office.jdbc().sql("""
                        insert into envelope_case (election_id, envelope_no, state, changed_at, version)
                        select election_id, envelope_no || ?, state, changed_at, version
                        from envelope_case where envelope_no not like '%-%-%'""").param(suffix).update();
        office.jdbc().sql("""
                        insert into assessment select election_id, envelope_no || ?, assessment_no, way, facts, as_of,
                            pack_hash, engine_version, recommendation, reasons, held_apart, content, assessed_at, texts
                        from assessment where envelope_no not like '%-%-%'""").param(suffix).update();
    }

    private static void list(TestOffice office) {
        long start = System.nanoTime();
        int rows = office.the(AssessmentStore.class).latest(new ElectionId(ID)).size();
        System.out.printf("%s: %d rows listed in %d ms%n", office.kind(), rows, millis(start));
    }

    private static void replay(TestOffice office, int round) {
        long start = System.nanoTime();
        ReplayVerdict verdict = office.the(AssessmentReplay.class).replay(new ElectionId(ID));
        System.out.printf(
                "%s, round %d: %d assessments made again in %d ms, %d differ%n",
                office.kind(), round, verdict.agreeing(), millis(start), verdict.differing());
    }

    private static long millis(long start) {
        return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
    }
}
