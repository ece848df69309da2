package org.proviso.journey;

import java.time.LocalDateTime;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.review.DeadlineService;

class ScriptedCanvassTest {

    @OnBothDatabases
    void all(TestOffice services) {
        Canvass canvass = new Canvass(services);
        long start = System.nanoTime();
        canvass.load();
        System.out.println("PLAY loaded " + (System.nanoTime() - start) / 1_000_000);
        System.out.println("PLAY review " + canvass.review() + canvass.states());
        canvass.at(9, 10, 0);
        System.out.println("PLAY cured " + canvass.cure());
        System.out.println("PLAY review " + canvass.review() + canvass.states());
        canvass.at(10, 17, 1);
        System.out.println("PLAY passed "
                + canvass.office().the(DeadlineService.class).look(Canvass.ID).size());
        System.out.println("PLAY review " + canvass.review() + canvass.states());
        System.out.println("PLAY met " + canvass.meet(LocalDateTime.of(2026, 11, 12, 9, 0)) + canvass.states());
        System.out.println("PLAY review " + canvass.review() + canvass.states());
        System.out.println("PLAY met " + canvass.meet(LocalDateTime.of(2026, 11, 13, 9, 0)) + canvass.states());
        System.out.println("PLAY released " + canvass.release(2) + canvass.states());
        System.out.println("PLAY all " + (System.nanoTime() - start) / 1_000_000);
    }
}
