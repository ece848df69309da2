package org.proviso.intake;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.proviso.core.BallotStyle;
import org.proviso.core.PrecinctPart;
import org.proviso.core.adjudication.finding.BallotCatalog;

/** What an envelope can say where and with which ballot it was cast, each list in order; empty where nothing is known. */
public record ReceivingChoices(
        List<String> votingLocations, List<String> precincts, List<String> styles, List<String> parties) {

    /** The voting locations of the precincts, and those from which something came. */
    public static ReceivingChoices of(BallotCatalog ballots, List<String> cameFrom) {
        Set<String> locations = new TreeSet<>(cameFrom);
        Set<String> precincts = new TreeSet<>();
        for (PrecinctPart part : ballots.parts()) {
            locations.add(part.votingLocation());
            precincts.add(part.precinct());
        }
        Set<String> styles = new TreeSet<>();
        Set<String> parties = new TreeSet<>();
        for (BallotStyle style : ballots.styles()) {
            styles.add(style.style());
            parties.add(style.party());
        }
        return new ReceivingChoices(stated(locations), stated(precincts), stated(styles), stated(parties));
    }

    private static List<String> stated(Set<String> words) {
        return words.stream().filter(word -> !word.isEmpty()).toList();
    }
}
