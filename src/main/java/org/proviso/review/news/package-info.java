/**
 * What reaches a case from outside it: newer files, rules, orders, deadlines, what a voter brought.
 * Cases that come out differently are marked, and later rooms hear of it.
 */
@NamedInterface("news")
@NullMarked
package org.proviso.review.news;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
