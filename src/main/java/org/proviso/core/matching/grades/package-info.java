/**
 * How well one field of an envelope agrees with that of a voter, as one of a few grades.
 * Each grade carries the weight it adds or takes.
 */
@NullMarked
package org.proviso.core.matching.grades;

import org.jspecify.annotations.NullMarked;
