package org.proviso.review.ui.desk;

/** Where a refusal is shown: next to the act. */
@FunctionalInterface
public interface RefusalDisplay {

    /** Says in the service's words why nothing was recorded. */
    void refuse(String words);
}
