package org.proviso.cli.sample;

import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.proviso.core.StreetSegment;

/** Makes a sample election from a plan and a seed: the county, its roll, the envelopes, the records, the signatures. */
final class SampleMaker {

    private final Plan plan;
    private final Dice dice;

    SampleMaker(Plan plan, long seed) {
        this.plan = plan;
        this.dice = new Dice(seed).apart(plan.id());
    }

    SampleElection make() {
        Town town = new Town(plan, dice);
        Families families = new Families(town, dice.apart("families"));
        families.settle();
        new Registrar(plan, dice.apart("registrar")).register(town.roll);
        town.roll.forEach(Person::enroll);
        town.roll.sort(Comparator.comparing(Person::voterId));
        Desk desk = new Desk(town, families, dice.apart("desk"));
        draw(desk);
        town.roll.forEach(Person::enroll);
        new Background(desk, dice.apart("background")).fill();
        new Numbering(dice.apart("numbers")).number(desk.drafts, plan.envelopePrefix());
        SignatureBook book = new SignatureBook(town, dice.apart("signatures"));
        return new SampleElection(
                plan.id(), ElectionYaml.of(plan), tables(desk), book.pictures(desk.drafts), truth(desk.drafts));
    }

    private void draw(Desk desk) {
        Mix mix = new Mix(desk);
        if (plan.primary()) {
            mix.primary();
        } else {
            mix.general();
        }
        new Blemishes(desk.town.names, dice.apart("blemishes")).spoil(desk.drafts);
    }

    private SortedMap<String, List<Row>> tables(Desk desk) {
        Town town = desk.town;
        SortedMap<String, List<Row>> tables = new TreeMap<>();
        tables.put("contests.csv", town.ballots.contestRows());
        tables.put("ballot-styles.csv", town.ballots.styleRows());
        tables.put("precincts.csv", precincts(town));
        tables.put(
                "streets.csv",
                town.streets.all().stream().map(SampleMaker::street).toList());
        tables.put("roll.csv", town.roll.stream().map(person -> person.roll).toList());
        tables.put("mail-ballots.csv", desk.mail);
        tables.put("check-ins.csv", desk.checkIns);
        if (!desk.elsewhere.isEmpty()) {
            tables.put("voted-elsewhere.csv", desk.elsewhere);
        }
        tables.put("transmittals.csv", new Bags(desk, dice.apart("bags")).transmittals());
        tables.put(
                "envelopes.csv",
                desk.drafts.stream().map(draft -> draft.envelope).toList());
        return tables;
    }

    private List<Row> precincts(Town town) {
        return town.parts.stream()
                .flatMap(part -> plan.parties().stream()
                        .map(party -> new Row(Columns.PRECINCTS)
                                .set("precinct", part.precinct())
                                .set("split", part.split())
                                .set("ballot_style", town.styleOf(part, party))
                                .set("party", party)
                                .set("voting_location", part.location())))
                .toList();
    }

    private static Row street(StreetSegment segment) {
        return new Row(Columns.STREETS)
                .set("low", segment.low())
                .set("high", segment.high())
                .set("parity", segment.parity().code())
                .set("street", segment.street())
                .set("city", segment.city())
                .set("zip", segment.zip())
                .set("precinct", segment.precinct())
                .set("split", segment.split());
    }

    private static List<Row> truth(List<Draft> drafts) {
        return drafts.stream()
                .map(draft -> new Row(Columns.TRUTH)
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
