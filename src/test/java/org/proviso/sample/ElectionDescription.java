package org.proviso.sample;

import org.proviso.sample.county.ElectionPlan;

/** The page that says which election this is, under which rules and by whom it is settled. */
final class ElectionDescription {

    private static final String PAGE = """
            # Invented for demonstration and tests: no such county, office or voter exists.
            name: %s
            date: %s
            kind: %s
            jurisdiction: Tamarack County
            zone: America/Detroit
            rule_pack: example
            decider:
              members: 3
              quorum: 2
            office:
              name: Tamarack County Election Office
              address: 1 Courthouse Sq, Millbrook 49871
              phone: 555-0100
              email: elections@example.org
              hours:
                en: Monday to Friday, 8 am to 5 pm
                es: de lunes a viernes, de 8 am a 5 pm
            polls_close: "20:00"
            languages: [en, es]
            %s
            days_closed: []
            receipts: check_digit
            """;
    private static final String EXTENSION = """
            orders:
              - kind: extend
                court: Tamarack County Circuit Court
                date: %s
                scope: %s
                standing: in_force
                until: %s
                envelopes: []""";

    private ElectionDescription() {}

    static String of(ElectionPlan plan) {
        String until = plan.date().atTime(ElectionPlan.EXTENDED_CLOSE).toString();
        String orders = plan.lateLocation().isEmpty()
                ? "orders: []"
                : EXTENSION.formatted(plan.date(), plan.lateLocation(), until);
        return PAGE.formatted(plan.title(), plan.date(), plan.kind(), orders);
    }
}
