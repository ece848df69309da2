package org.proviso.canvass;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Holds the counts of an election to its identities: per voting location in the order of their names, then the county,
 * each group of hours apart. There is no tolerance: one envelope is a difference.
 */
public final class Reconciliation {

    private final Collection<BalanceRule> asked;
    private final List<BalanceResult> balances = new ArrayList<>();

    private Reconciliation(Collection<BalanceRule> asked) {
        this.asked = asked;
    }

    /** How each identity asked for stands, in every place that can be held to it. */
    public static List<BalanceResult> reconcile(CanvassFigures accounts, Collection<BalanceRule> asked) {
        Reconciliation reconciliation = new Reconciliation(asked);
        VotingHours hours = accounts.hours();
        for (Map.Entry<String, PlaceFigures> entry : new TreeMap<>(accounts.locations()).entrySet()) {
            reconciliation.location(CanvassPlace.location(entry.getKey(), hours), entry.getValue());
        }
        asked.stream()
                .sorted()
                .forEach(identity ->
                        reconciliation.balances.add(balance(CanvassPlace.county(hours), identity, accounts.county())));
        return List.copyOf(reconciliation.balances);
    }

    private void location(CanvassPlace place, PlaceFigures counts) {
        asked.stream()
                .filter(BalanceRule::isOfLocations)
                .sorted()
                .forEach(identity -> balances.add(balance(place, identity, counts)));
    }

    private static BalanceResult balance(CanvassPlace place, BalanceRule identity, PlaceFigures counts) {
        List<Figure> missing = identity.figures().stream()
                .filter(figure -> !counts.has(figure))
                .toList();
        if (!missing.isEmpty()) {
            String asks = missing.stream().map(Figure::asked).collect(Collectors.joining("; "));
            return new BalanceResult.CannotBeChecked(
                    place, identity, missing, place.words() + " cannot be checked. Not noted: " + asks + ".");
        }
        int by = counts.number(identity.whole()) - parts(identity, counts);
        String words = sentence(place.words(), identity, counts);
        return by == 0
                ? new BalanceResult.Holds(place, identity, words)
                : new BalanceResult.Differs(place, identity, by, words);
    }

    private static int parts(BalanceRule identity, PlaceFigures counts) {
        return sum(identity.added(), counts) - sum(identity.takenOff(), counts);
    }

    private static int sum(List<Figure> figures, PlaceFigures counts) {
        return figures.stream().mapToInt(counts::number).sum();
    }

    private static String sentence(String place, BalanceRule identity, PlaceFigures counts) {
        List<Figure> others = new ArrayList<>(identity.added());
        others.addAll(identity.takenOff());
        if (others.isEmpty()) {
            return place + " " + identity.whole().words(counts.number(identity.whole())) + ".";
        }
        String rest = others.stream()
                .map(figure -> figure.shortWords(counts.number(figure)))
                .collect(Collectors.joining(", "));
        String together = others.size() == 1 ? "" : ", which makes " + parts(identity, counts);
        return place + " " + identity.whole().words(counts.number(identity.whole())) + " and " + rest + together + ".";
    }
}
