package org.proviso.sample;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.proviso.sample.county.ElectionPlan;

/** The sample elections there are, by name; each is made from a seed, the same seed giving the same bytes. */
public final class Samples {

    /** The seed of the folders that are published with the program. */
    public static final long PUBLISHED_SEED = 20261103L;

    /** The name of the general election, which a demonstration begins with. */
    public static final String GENERAL = ElectionPlan.GENERAL.id();

    /** Nine in the morning after its election day, on the county's clock. */
    public static final Instant WORK_BEGINS = ElectionPlan.GENERAL
            .date()
            .plusDays(1)
            .atTime(9, 0)
            .atZone(ZoneId.of("America/Detroit"))
            .toInstant();

    private static final List<ElectionPlan> PLANS = List.of(ElectionPlan.GENERAL, ElectionPlan.PRIMARY);

    private Samples() {}

    public static List<String> names() {
        return PLANS.stream().map(ElectionPlan::id).toList();
    }

    /** Writes the election of that name as a folder under {@code out}, and its truth under {@code out/truth}. */
    public static void write(String name, long seed, Path out) throws IOException {
        new FolderWriter(out).write(make(name, seed));
    }

    static SampleElection make(String name, long seed) {
        ElectionPlan plan = PLANS.stream()
                .filter(known -> known.id().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "no sample election \"" + name + "\"; there are " + String.join(" and ", names())));
        return new SampleMaker(plan, seed).make();
    }
}
