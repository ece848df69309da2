/** The voter's own page: plain, without a cookie, in English and Spanish. */
@NullMarked
package org.proviso.status.ui;

import org.jspecify.annotations.NullMarked;
