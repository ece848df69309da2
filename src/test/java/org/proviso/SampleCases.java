package org.proviso;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.proviso.core.Election;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.Adjudicator;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.matching.Match;
import org.proviso.core.matching.MatchQuery;
import org.proviso.core.matching.Matcher;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.index.RollIndexBuilder;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.PackResolver;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.files.election.ElectionFolder;
import org.proviso.files.election.FolderRecords;
import org.proviso.files.packs.RulePacks;

/** The cases of a sample election over its folder, with the links as matched, three days after the election. */
public record SampleCases(
        ElectionFolder folder, Map<EnvelopeNumber, Link> links, DeadlineBook book, LocalDateTime asOf) {

    public static final List<String> NAMES = List.of("tamarack-primary", "tamarack-general");

    /** Read and matched once in a run: nothing of it changes. */
    private static final Map<String, SampleCases> PRESUMED = new ConcurrentHashMap<>();

    public static SampleCases presumed(String sample) {
        return PRESUMED.computeIfAbsent(sample, SampleCases::read);
    }

    private static SampleCases read(String sample) {
        ElectionFolder folder = ElectionFolder.read(Path.of("sample-cases", sample));
        Election election = folder.election();
        ResolvedPack pack = PackResolver.resolve(
                RulePacks.load(election.rulePack()), election.date(), RulePacks.rulings(election.rulings()));
        return new SampleCases(
                folder,
                matched(folder),
                DeadlineBook.of(pack, election.daysClosed()),
                election.date().plusDays(3).atTime(9, 0));
    }

    private static Map<EnvelopeNumber, Link> matched(ElectionFolder folder) {
        RollIndexBuilder roll = RollIndex.builder();
        folder.voters().values().forEach(roll::add);
        List<MatchQuery> queries =
                folder.envelopes().stream().map(MatchQuery::of).toList();
        Map<EnvelopeNumber, Link> links = new LinkedHashMap<>();
        for (Match match : new Matcher(roll.build()).matchAll(queries, 1)) {
            links.put(match.envelopeNo(), Link.presumed(match));
        }
        return links;
    }

    /** Every link that names a voter, as if a person had confirmed it. */
    public SampleCases confirmed() {
        Map<EnvelopeNumber, Link> confirmed = new LinkedHashMap<>();
        links.forEach((number, link) -> confirmed.put(number, link.voterId() == null ? link : link.confirmed()));
        return new SampleCases(folder, confirmed, book, asOf);
    }

    /** The same cases at another moment. */
    public SampleCases at(LocalDateTime moment) {
        return new SampleCases(folder, links, book, moment);
    }

    /** The case of every envelope in the order of its file. */
    public List<CaseReport> reports() {
        Adjudicator adjudicator = new Adjudicator(new FolderRecords(folder, links), book, asOf);
        return folder.envelopes().stream()
                .map(envelope -> adjudicator.report(envelope, links.get(envelope.envelopeNo())))
                .toList();
    }
}
