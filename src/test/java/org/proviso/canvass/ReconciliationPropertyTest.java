package org.proviso.canvass;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds for any county whose numbers add up, and what one envelope does to them. */
class ReconciliationPropertyTest {

    private static final Set<BalanceRule> ALL = EnumSet.allOf(BalanceRule.class);

    @Property
    void reconciles_any_counts_that_add_up(
            @ForAll("locations") List<PlaceFigures> locations, @ForAll VotingHours hours) {
        assertThat(Reconciliation.reconcile(accounts(hours, locations), ALL))
                .allMatch(BalanceResult.Holds.class::isInstance);
    }

    /** An envelope logged under another location than its own: both locations are off by one, the county is not. */
    @Property
    void finds_one_envelope_logged_under_another_location(@ForAll("locations") List<PlaceFigures> locations) {
        CanvassFigures sound = accounts(VotingHours.REGULAR, locations);
        Map<String, PlaceFigures> moved = new LinkedHashMap<>(sound.locations());
        moved.computeIfPresent("Hall 0", (name, counts) -> add(counts, Figure.RECEIVED, -1));
        moved.computeIfPresent("Hall 1", (name, counts) -> add(counts, Figure.RECEIVED, 1));

        Set<String> off =
                Set.of("ISSUED_ARRIVED", "SENT_BACK_ARRIVED", "EVERY_ONE_HAS_AN_OUTCOME", "ISSUE_REASONS", "STATES");
        assertThat(broken(new CanvassFigures(VotingHours.REGULAR, moved, sound.ofCounty())))
                .isEqualTo(at(off, "Hall 0", "Hall 1"));
    }

    /** An envelope whose outcome changed without a trace: its location and the county find it in these and no others. */
    @Property
    void finds_one_count_turned_into_a_rejection(@ForAll("locations") List<PlaceFigures> locations) {
        CanvassFigures sound = accounts(VotingHours.REGULAR, locations);
        Map<String, PlaceFigures> turned = new LinkedHashMap<>(sound.locations());
        turned.computeIfPresent("Hall 0", (name, counts) -> add(add(counts, Figure.COUNTED, -1), Figure.REJECTED, 1));

        Set<String> expected = new HashSet<>(at(Set.of("REJECTION_REASONS"), "Hall 0", "The county"));
        expected.addAll(at(Set.of("BALLOTS", "CREDIT", "OUTCOMES_TOLD"), "The county"));
        assertThat(broken(new CanvassFigures(VotingHours.REGULAR, turned, sound.ofCounty())))
                .isEqualTo(expected);
    }

    /** One number off by any amount breaks exactly the identities that name it, each by that amount. */
    @Property
    void breaks_exactly_the_identities_that_name_a_wrong_number(
            @ForAll("locations") List<PlaceFigures> locations,
            @ForAll("noted") Figure figure,
            @ForAll("errors") int error) {
        CanvassFigures sound = accounts(VotingHours.REGULAR, locations);
        Map<String, PlaceFigures> wrong = new LinkedHashMap<>(sound.locations());
        wrong.computeIfPresent("Hall 0", (name, counts) -> add(counts, figure, error));

        List<BalanceResult.Differs> differs =
                Reconciliation.reconcile(new CanvassFigures(VotingHours.REGULAR, wrong, sound.ofCounty()), ALL).stream()
                        .filter(balance -> balance.place().equals("Hall 0"))
                        .filter(BalanceResult.Differs.class::isInstance)
                        .map(BalanceResult.Differs.class::cast)
                        .toList();
        assertThat(differs).extracting(BalanceResult.Differs::identity).containsExactlyElementsOf(naming(figure));
        assertThat(differs).allMatch(difference -> Math.abs(difference.by()) == Math.abs(error));
    }

    private static List<BalanceRule> naming(Figure figure) {
        return ALL.stream()
                .filter(BalanceRule::isOfLocations)
                .filter(identity -> identity.figures().contains(figure))
                .toList();
    }

    @Provide
    Arbitrary<List<PlaceFigures>> locations() {
        Arbitrary<Integer> some = Arbitraries.integers().between(0, 40);
        return Combinators.combine(some, some, some, some)
                .as((counted, part, rejected, pending) ->
                        SmallCounty.location(counted + part + rejected + pending, part, rejected, pending))
                .list()
                .ofMinSize(2)
                .ofMaxSize(6);
    }

    @Provide
    Arbitrary<Figure> noted() {
        return Arbitraries.of(SmallCounty.MILL_POND.figures().keySet());
    }

    @Provide
    Arbitrary<Integer> errors() {
        return Arbitraries.integers().between(-3, 3).filter(error -> error != 0);
    }

    private static CanvassFigures accounts(VotingHours hours, List<PlaceFigures> locations) {
        Map<String, PlaceFigures> named = new LinkedHashMap<>();
        locations.forEach(counts -> named.put("Hall " + named.size(), counts));
        return SmallCounty.accounts(hours, named);
    }

    private static PlaceFigures add(PlaceFigures counts, Figure figure, int more) {
        return counts.with(figure, counts.number(figure) + more);
    }

    private static Set<String> broken(CanvassFigures accounts) {
        return Reconciliation.reconcile(accounts, ALL).stream()
                .filter(BalanceResult.Differs.class::isInstance)
                .map(result -> result.place() + " " + result.identity())
                .collect(Collectors.toSet());
    }

    private static Set<String> at(Set<String> identities, String... places) {
        return Arrays.stream(places)
                .flatMap(place -> identities.stream().map(identity -> place + " " + identity))
                .collect(Collectors.toSet());
    }
}
