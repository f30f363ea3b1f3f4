package panade.compile;

import panade.domain.Use;
import panade.domain.purchase.OfferId;

/**
 * Which column is meant, in whichever model of a brief and at whatever price.
 *
 * @param use what is weighed in and where
 * @param offer whose goods
 */
public record ColumnId(Use use, OfferId offer) {}
