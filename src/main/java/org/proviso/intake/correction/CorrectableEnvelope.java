package org.proviso.intake.correction;

import java.util.List;
import java.util.Map;
import org.proviso.core.Envelope;
import org.proviso.intake.keying.KeyedText;

/**
 * An envelope as whoever corrects it sees it: the version that a correction needs, what was keyed box by box (empty where
 * it is still to be keyed), what stands in the way (empty where nothing does), and the corrections so far.
 */
public record CorrectableEnvelope(
        Envelope envelope,
        int version,
        Map<String, KeyedText> keyed,
        String inTheWay,
        List<EnvelopeCorrection> corrections) {}
