package org.proviso.review;

import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.proviso.core.Election;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.Adjudicator;
import org.proviso.core.adjudication.explain.Explanation;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.finding.Records;
import org.proviso.core.matching.Match;
import org.proviso.core.matching.MatchQuery;
import org.proviso.core.matching.Matcher;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.index.RollIndexBuilder;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.PackResolver;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.files.election.ElectionFolder;
import org.proviso.files.packs.RulePacks;

/** The explanation of every envelope by its number, and how long assessing and explaining took. */
record Pages(Map<EnvelopeNumber, String> byEnvelope, long millis) {

    static Pages of(Records records, List<Envelope> envelopes, Map<EnvelopeNumber, Link> links) {
        Election election = records.election();
        ResolvedPack pack = PackResolver.resolve(
                RulePacks.load(election.rulePack()), election.date(), RulePacks.rulings(election.rulings()));
        LocalDateTime asOf = election.date().plusDays(3).atTime(9, 0);
        long start = System.nanoTime();
        Adjudicator adjudicator = new Adjudicator(records, DeadlineBook.of(pack, election.daysClosed()), asOf);
        Map<EnvelopeNumber, String> pages = new LinkedHashMap<>();
        for (Envelope envelope : envelopes) {
            EnvelopeNumber number = envelope.envelopeNo();
            pages.put(
                    number,
                    Explanation.of(adjudicator.report(envelope, links.get(number)), records, pack, asOf.toString()));
        }
        return new Pages(pages, TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start));
    }

    static Map<EnvelopeNumber, Link> presumedLinks(ElectionFolder folder) {
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
    static Map<EnvelopeNumber, Link> confirmed(Map<EnvelopeNumber, Link> presumed) {
        Map<EnvelopeNumber, Link> links = new LinkedHashMap<>();
        presumed.forEach((number, link) -> links.put(number, link.voterId() == null ? link : link.confirmed()));
        return links;
    }
}
