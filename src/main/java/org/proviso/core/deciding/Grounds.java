package org.proviso.core.deciding;

import java.util.List;
import org.proviso.core.rules.Reason;

/**
 * Why a decision falls as it does: its coded reasons, the first one primary, the place in the law, and why it departs
 * from the recommendation (both texts empty where there is none).
 */
public record Grounds(List<Reason> reasons, String legalReference, String departsBecause) {}
