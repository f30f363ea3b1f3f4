package panade.design;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** What exchanging one trial for another is worth, without working the new design out. */
interface SwapMerits {
    /**
     * Above nought where the exchange helps, and the larger the more, in a unit that the design sets.
     *
     * @param out the candidate of a trial that is left out
     * @param in the candidate that comes in its place
     */
    BigFraction of(int out, int in);

    static SwapMerits of(
            Information information, List<BigInteger[]> rows, Information.Scales scales, Criterion criterion) {
        var determinants = new Determinants(
                information.wholeDeterminant(), scales.weight(), Products.of(rows, information::image));
        if (criterion instanceof Criterion.MeanVariance mean) {
            var moments = scales.whole(mean.region());
            return new Means(
                    determinants,
                    Products.of(rows, row -> information.image(Information.product(moments, information.image(row)))));
        }
        return determinants;
    }

    /** Rows multiplied by a matrix: what comes of any two of them, and of each with itself. */
    record Products(List<BigInteger[]> rows, List<BigInteger[]> images, List<BigInteger> squares) {
        /** A matrix that multiplies a row. */
        interface Matrix {
            BigInteger[] times(BigInteger[] row);
        }

        static Products of(List<BigInteger[]> rows, Matrix matrix) {
            var images = rows.stream().map(matrix::times).toList();
            var products = new Products(rows, images, List.of());
            var squares = new ArrayList<BigInteger>();
            for (int i = 0; i < rows.size(); i++) {
                squares.add(products.of(i, i));
            }
            return new Products(rows, images, squares);
        }

        BigInteger of(int one, int other) {
            return Information.product(rows.get(one), images.get(other));
        }
    }

    /**
     * The gain in the determinant d. With D(x, y) = x'Ay for the adjugate A and the weight w of a trial, d times the
     * new one is (d + w D(j, j)) (d - w D(i, i)) + w w D(i, j) D(i, j) where i goes and j comes.
     */
    record Determinants(BigInteger determinant, BigInteger weight, Products products) implements SwapMerits {
        @Override
        public BigFraction of(int out, int in) {
            return BigFraction.of(after(out, in).subtract(determinant.multiply(determinant)));
        }

        BigInteger after(int out, int in) {
            var cross = weighed(products.of(out, in));
            return with(in).multiply(without(out)).add(cross.multiply(cross));
        }

        BigInteger with(int in) {
            return determinant.add(weighed(products.squares().get(in)));
        }

        BigInteger without(int out) {
            return determinant.subtract(weighed(products.squares().get(out)));
        }

        BigInteger weighed(BigInteger value) {
            return weight.multiply(value);
        }
    }

    /**
     * The fall of the mean variance, by Woodbury's identity for the two rows at once: with M(x, y) = x'ABAy for the
     * moments B, it is in proportion to ((d - w D(i, i)) M(j, j) + 2 w D(i, j) M(i, j) - (d + w D(j, j)) M(i, i)) / (d
     * times the new determinant).
     */
    record Means(Determinants determinants, Products products) implements SwapMerits {
        @Override
        public BigFraction of(int out, int in) {
            var after = determinants.after(out, in);
            if (after.signum() <= 0) {
                return BigFraction.ONE.negate();
            }
            var cross =
                    determinants.weighed(determinants.products().of(out, in)).shiftLeft(1);
            var gained = determinants.without(out).multiply(products.squares().get(in));
            var lost = determinants.with(in).multiply(products.squares().get(out));
            return BigFraction.of(
                    gained.add(cross.multiply(products.of(out, in))).subtract(lost), after);
        }
    }
}
