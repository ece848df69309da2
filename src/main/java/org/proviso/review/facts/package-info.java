/**
 * What people recorded about a case and what the records say of it: links, answers, searches, asks for research, voters told.
 * The stores of the case live here; pages reach them only through the services of the other rooms of review.
 */
@NullMarked
package org.proviso.review.facts;

import org.jspecify.annotations.NullMarked;
