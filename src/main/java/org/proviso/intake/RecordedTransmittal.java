package org.proviso.intake;

import org.proviso.core.Transmittal;

/** A transmittal on file by its line in the election; the version goes with a later correction. */
public record RecordedTransmittal(int lineNo, int version, Transmittal transmittal) {}
