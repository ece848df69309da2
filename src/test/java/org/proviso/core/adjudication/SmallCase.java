package org.proviso.core.adjudication;

import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Collectors;
import org.proviso.core.Code;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.CaseFacts;
import org.proviso.core.adjudication.finding.Evidence;
import org.proviso.core.adjudication.finding.FactFinder;
import org.proviso.core.adjudication.finding.Finding;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.DeadlineBook;

/** One envelope, one voter and the records around them, under the example pack unless told otherwise. */
final class SmallCase {

    final SmallRecords records = new SmallRecords();
    final VoterMaker voter = new VoterMaker();
    final EnvelopeMaker envelope = new EnvelopeMaker();
    ChangedPack pack = ChangedPack.of("example");
    Link link =
            new Link(VoterIdentityFact.CONFIRMED, VoterId.orNull("V1"), 0.999, List.of("Same name and date of birth."));

    /** The words of the fact over the presumed link, or {@code unknown}. */
    String word(Fact<?> fact) {
        return spelled(presumed().finding(fact));
    }

    /** The same as things stand, with what is nobody's until the link is settled left out. */
    String settledWord(Fact<?> fact) {
        return spelled(finder().settled(envelope.make(), link, presumed()).finding(fact));
    }

    String evidence(Fact<?> fact) {
        return presumed().evidence(fact).stream().map(Evidence::words).collect(Collectors.joining(" "));
    }

    CaseFacts presumed() {
        return finder().presumed(envelope.make(), link);
    }

    CaseReport report(LocalDateTime asOf) {
        finder();
        return new Adjudicator(records, book(), asOf).report(envelope.make(), link);
    }

    /** No record fits; nobody has searched yet. */
    void noVoter() {
        link = new Link(VoterIdentityFact.NONE_FITS, null, 0, List.of());
    }

    private FactFinder finder() {
        if (link.voterId() != null) {
            records.voters.put("V1", voter.make());
        }
        return new FactFinder(records, book());
    }

    private DeadlineBook book() {
        return pack.book();
    }

    private static String spelled(Finding finding) {
        return finding.words() == null
                ? "unknown"
                : finding.words().stream().map(Code::code).sorted().collect(Collectors.joining("+"));
    }
}
