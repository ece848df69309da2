/**
 * The roll in memory: its columns, keys and lists, and how they are built and updated.
 * It finds the voters who may be the one of an envelope.
 */
@NullMarked
package org.proviso.core.matching.index;

import org.jspecify.annotations.NullMarked;
