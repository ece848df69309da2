package org.proviso.cli;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.proviso.core.Election;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.Adjudicator;
import org.proviso.core.adjudication.CaseReport;
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
import org.proviso.core.rules.RulePack;
import org.proviso.files.InputException;
import org.proviso.files.election.ElectionFolder;
import org.proviso.files.election.FolderRecords;
import org.proviso.files.packs.RulePacks;

/** One run over an election folder: the rules in force, the links presumed, and the case of every envelope. */
record AdjudicationRun(
        ElectionFolder folder, LocalDateTime asOf, DeadlineBook book, Records records, List<CaseReport> cases) {

    static AdjudicationRun of(ElectionFolder folder, LocalDateTime asOf, int threads) {
        Election election = folder.election();
        ResolvedPack pack =
                PackResolver.resolve(pack(election.rulePack()), election.date(), RulePacks.rulings(election.rulings()));
        DeadlineBook book = DeadlineBook.of(pack, election.daysClosed());
        Map<EnvelopeNumber, Link> links = links(folder, threads);
        Records records = new FolderRecords(folder, links);
        return of(folder, asOf, book, records, links);
    }

    private static AdjudicationRun of(
            ElectionFolder folder,
            LocalDateTime asOf,
            DeadlineBook book,
            Records records,
            Map<EnvelopeNumber, Link> links) {
        Adjudicator adjudicator = new Adjudicator(records, book, asOf);
        List<CaseReport> cases = new ArrayList<>();
        for (Envelope envelope : folder.envelopes()) {
            cases.add(adjudicator.report(
                    envelope,
                    Objects.requireNonNull(
                            links.get(envelope.envelopeNo()), "every envelope has a link, if only to nobody")));
        }
        return new AdjudicationRun(folder, asOf, book, records, List.copyOf(cases));
    }

    /** The same envelopes with the same links under other rules. */
    AdjudicationRun under(DeadlineBook other) {
        Map<EnvelopeNumber, Link> links = new LinkedHashMap<>();
        cases.forEach(report -> links.put(report.envelope().envelopeNo(), report.link()));
        return of(folder, asOf, other, records, links);
    }

    Election election() {
        return folder.election();
    }

    ResolvedPack pack() {
        return book.pack();
    }

    private static RulePack pack(String name) {
        try {
            return RulePacks.load(name);
        } catch (InputException e) {
            if (e.file().equals(name)) {
                throw InputException.atKey(
                        "election.yaml", 0, "rule_pack", InputException.quoted(name) + " " + e.reason());
            }
            throw e;
        }
    }

    private static Map<EnvelopeNumber, Link> links(ElectionFolder folder, int threads) {
        RollIndexBuilder roll = RollIndex.builder();
        folder.voters().values().forEach(roll::add);
        List<MatchQuery> queries =
                folder.envelopes().stream().map(MatchQuery::of).toList();
        Map<EnvelopeNumber, Link> links = new LinkedHashMap<>();
        for (Match match : new Matcher(roll.build()).matchAll(queries, threads)) {
            links.put(match.envelopeNo(), Link.presumed(match));
        }
        return links;
    }
}
