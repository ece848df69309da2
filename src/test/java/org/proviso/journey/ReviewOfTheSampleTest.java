package org.proviso.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.Map;
import org.proviso.core.adjudication.Recommendation;
import org.proviso.database.OfficeTime;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionService;
import org.proviso.review.CaseKey;

class ReviewOfTheSampleTest {

    @OnBothDatabases
    void works(TestOffice services) {
        Office office = Office.staffed(services);
        OfficeTime.set(services, LocalDateTime.of(2026, 11, 4, 12, 0));
        long start = System.nanoTime();
        Office.as("carl", () -> office.the(ElectionService.class).load(Path.of("sample-cases", "tamarack-general")));
        System.out.println("loaded " + (System.nanoTime() - start) / 1_000_000);
        Map<Recommendation, Integer> says = new EnumMap<>(Recommendation.class);
        start = System.nanoTime();
        Truth.of("tamarack-general").values().forEach(truth -> {
            Reviewing one = new Reviewing(office, new CaseKey("tamarack-general", truth.envelopeNo()), truth);
            Recommendation r = one.work();
            says.merge(r, 1, Integer::sum);
            if (!r.words().equals(truth.outcome())) {
                System.out.println(
                        truth + " " + r + " " + one.report().settled().stillOpen());
            }
        });
        System.out.println(says + " " + (System.nanoTime() - start) / 1_000_000);
        assertThat(says).isNotEmpty();
    }
}
