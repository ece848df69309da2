/** From facts to a recommendation: facts, questions, answers, assessment. */
@NullMarked
package org.proviso.core.adjudication;

import org.jspecify.annotations.NullMarked;
