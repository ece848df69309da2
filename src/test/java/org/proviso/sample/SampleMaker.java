package org.proviso.sample;

import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.proviso.core.StreetSegment;
import org.proviso.sample.cases.CaseMix;
import org.proviso.sample.county.County;
import org.proviso.sample.county.Dice;
import org.proviso.sample.county.ElectionPlan;
import org.proviso.sample.county.FileColumns;
import org.proviso.sample.county.FileRow;
import org.proviso.sample.county.Households;
import org.proviso.sample.county.Registrar;
import org.proviso.sample.county.Resident;
import org.proviso.sample.envelope.DraftEnvelope;
import org.proviso.sample.envelope.EnvelopeDesk;
import org.proviso.sample.envelope.EnvelopeNumbers;
import org.proviso.sample.envelope.OrdinaryVoters;
import org.proviso.sample.envelope.Transmittals;
import org.proviso.sample.keying.Blemishes;
import org.proviso.sample.signature.SignatureBook;

/** Makes a sample election from a plan and a seed: the county, its roll, the envelopes, the records, the signatures. */
final class SampleMaker {

    private final ElectionPlan plan;
    private final Dice dice;

    SampleMaker(ElectionPlan plan, long seed) {
        this.plan = plan;
        this.dice = new Dice(seed).apart(plan.id());
    }

    SampleElection make() {
        County county = new County(plan, dice);
        Households families = new Households(county, dice.apart("families"));
        families.settle();
        new Registrar(plan, dice.apart("registrar")).register(county.roll);
        county.roll.forEach(Resident::enroll);
        county.roll.sort(Comparator.comparing(Resident::voterId));
        EnvelopeDesk desk = new EnvelopeDesk(county, families, dice.apart("desk"));
        draw(desk);
        county.roll.forEach(Resident::enroll);
        new OrdinaryVoters(desk, dice.apart("background")).fill();
        new EnvelopeNumbers(dice.apart("numbers")).number(desk.drafts, plan.envelopePrefix());
        SignatureBook book = new SignatureBook(county, dice.apart("signatures"));
        return new SampleElection(
                plan.id(), ElectionDescription.of(plan), tables(desk), book.pictures(desk.drafts), truth(desk.drafts));
    }

    private void draw(EnvelopeDesk desk) {
        CaseMix mix = new CaseMix(desk);
        if (plan.primary()) {
            mix.primary();
        } else {
            mix.general();
        }
        new Blemishes(desk.county.names, dice.apart("blemishes")).spoil(desk.drafts);
    }

    private SortedMap<String, List<FileRow>> tables(EnvelopeDesk desk) {
        County county = desk.county;
        SortedMap<String, List<FileRow>> tables = new TreeMap<>();
        tables.put("contests.csv", county.ballots.contestRows());
        tables.put("ballot-styles.csv", county.ballots.styleRows());
        tables.put("precincts.csv", precincts(county));
        tables.put(
                "streets.csv",
                county.streets.all().stream().map(SampleMaker::street).toList());
        tables.put("roll.csv", county.roll.stream().map(person -> person.roll).toList());
        tables.put("mail-ballots.csv", desk.mail);
        tables.put("check-ins.csv", desk.checkIns);
        if (!desk.elsewhere.isEmpty()) {
            tables.put("voted-elsewhere.csv", desk.elsewhere);
        }
        tables.put("transmittals.csv", new Transmittals(desk, dice.apart("bags")).transmittals());
        tables.put(
                "envelopes.csv",
                desk.drafts.stream().map(draft -> draft.envelope).toList());
        return tables;
    }

    private List<FileRow> precincts(County county) {
        return county.parts.stream()
                .flatMap(part -> plan.parties().stream()
                        .map(party -> new FileRow(FileColumns.PRECINCTS)
                                .set("precinct", part.precinct())
                                .set("split", part.split())
                                .set("ballot_style", county.styleOf(part, party))
                                .set("party", party)
                                .set("voting_location", part.location())))
                .toList();
    }

    private static FileRow street(StreetSegment segment) {
        return new FileRow(FileColumns.STREETS)
                .set("low", segment.low())
                .set("high", segment.high())
                .set("parity", segment.parity().code())
                .set("street", segment.street())
                .set("city", segment.city())
                .set("zip", segment.zip())
                .set("precinct", segment.precinct())
                .set("split", segment.split());
    }

    private static List<FileRow> truth(List<DraftEnvelope> drafts) {
        return drafts.stream()
                .map(draft -> new FileRow(FileColumns.TRUTH)
                        .set("envelope_no", draft.get("envelope_no"))
                        .set("voter_id", draft.onRoll ? draft.person.voterId() : "")
                        .set("outcome", draft.outcome.word)
                        .set("contests", String.join(";", draft.contests))
                        .set("signature", draft.signature)
                        .set("scenario", draft.scenario)
                        .set("note", String.join("; ", draft.notes)))
                .toList();
    }
}
