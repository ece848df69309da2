/** The canvass and the ledger in the browser: totals in and out of balance, where envelopes went, and every act. */
@NullMarked
package org.proviso.canvass.ui;

import org.jspecify.annotations.NullMarked;
