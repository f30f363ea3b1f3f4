package panade.crosscheck;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A selector: its JSON members and what a share of each use adds to it, in kilograms per kilogram or in a trait's
 * score.
 */
record Pick(String json, List<BigFraction> form) {

    Pick within(Pick place) {
        return new Pick(json + ", \"within\": {" + place.json + "}", Exact.both(form, place.form));
    }

    Pick plus(Pick other) {
        return new Pick("\"sum\": [{" + json + "}, {" + other.json + "}]", Exact.sum(List.of(form, other.form)));
    }
}
