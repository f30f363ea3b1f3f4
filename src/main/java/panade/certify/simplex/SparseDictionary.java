package panade.certify.simplex;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.model.Basis;
import panade.model.LinearForm;
import panade.model.LinearModel;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.WholePoint;

/**
 * A dictionary of which nothing is kept but its basis: what is asked of it is solved for, exactly, in the sparse system
 * of the basis (the revised simplex method; Dantzig and Orchard-Hays, Math. Tables and Other Aids to Computation 8,
 * 1954). A few vectors are asked for at each step, where a dense dictionary works out every cell of every step.
 */
public final class SparseDictionary implements Dictionary {
    private static final BigFraction ZERO = BigFraction.ZERO;

    private final LinearModel model;
    private final int columnCount;
    private final int[] basic;
    private final int[] nonbasic;
    private BasisSystem system;
    private LinearForm direction = LinearForm.ZERO;
    /** The row whose slack is moved by the parameter, and which way; -1 where none is. */
    private int movedRow = -1;

    private int movedSign;

    /** What was asked for since the last pivot. */
    private @Nullable Cells constants;

    private @Nullable Cells parameters;
    private @Nullable Cells prices;
    private @Nullable Cells directions;
    private @Nullable List<BigFraction> point;
    private @Nullable List<BigFraction> shift;
    private final Map<Integer, Cells> lines = new HashMap<>();
    private final Map<Integer, Cells> columns = new HashMap<>();

    private SparseDictionary(LinearModel model, int[] basic, int[] nonbasic, BasisSystem system) {
        this.model = model;
        this.columnCount = model.columns().size();
        this.basic = basic;
        this.nonbasic = nonbasic;
        this.system = system;
    }

    /** A system that could not be solved in this way: the dense dictionary has to be made. */
    public static final class Lost extends ArithmeticException {
        private static final long serialVersionUID = 1;

        private Lost() {
            super("a basis could not be solved for");
        }
    }

    /**
     * The dictionary of a basis; empty where its system is not square or cannot be solved, or the slack of an equation
     * is in it.
     */
    public static Optional<SparseDictionary> of(LinearModel model, Basis basis) {
        boolean tight = basis.rows().stream().allMatch(i -> model.rows().get(i).sense() != Sense.EQUAL);
        return tight ? BasisSystem.of(model, basis).map(system -> of(model, basis, system)) : Optional.empty();
    }

    private static SparseDictionary of(LinearModel model, Basis basis, BasisSystem system) {
        int n = model.columns().size();
        var basic = new ArrayList<Integer>();
        var nonbasic = new ArrayList<Integer>();
        for (int variable = 0; variable < n + model.rows().size(); variable++) {
            boolean in = variable < n
                    ? basis.columns().contains(variable)
                    : basis.rows().contains(variable - n);
            (in ? basic : nonbasic).add(variable);
        }
        return new SparseDictionary(model, ints(basic), ints(nonbasic), system);
    }

    private static int[] ints(List<Integer> values) {
        return values.stream().mapToInt(Integer::intValue).toArray();
    }

    @Override
    public SparseDictionary copy() {
        // what nearly every question needs is solved for once, not in each copy
        constants();
        prices();
        var copy = new SparseDictionary(model, basic.clone(), nonbasic.clone(), system);
        copy.direction = direction;
        copy.movedRow = movedRow;
        copy.movedSign = movedSign;
        copy.constants = constants;
        copy.parameters = parameters;
        copy.prices = prices;
        copy.directions = directions;
        copy.point = point;
        copy.shift = shift;
        return copy;
    }

    @Override
    public int rows() {
        return basic.length;
    }

    @Override
    public int columns() {
        return nonbasic.length;
    }

    @Override
    public int basic(int line) {
        return basic[line];
    }

    @Override
    public int nonbasic(int place) {
        return nonbasic[place];
    }

    @Override
    public int placeOf(int variable) {
        for (int j = 0; j < nonbasic.length; j++) {
            if (nonbasic[j] == variable) {
                return j;
            }
        }
        return -1;
    }

    @Override
    public boolean locked(int variable) {
        return variable >= columnCount && row(variable).sense() == Sense.EQUAL;
    }

    private Row row(int slack) {
        return model.rows().get(slack - columnCount);
    }

    private static boolean isMost(Row row) {
        return row.sense() == Sense.AT_MOST;
    }

    @Override
    public Cells line(int line) {
        var known = lines.get(line);
        if (known == null) {
            known = solvedLine(line);
            lines.put(line, known);
        }
        return known;
    }

    private Cells solvedLine(int line) {
        int variable = basic[line];
        if (variable < columnCount) {
            return over(LinearForm.of(variable, BigFraction.ONE));
        }
        var form = row(variable).form();
        return over(isMost(row(variable)) ? form.negated() : form);
    }

    /** A form of the columns over the nonbasic variables, by place. */
    private Cells over(LinearForm form) {
        var multipliers = solved(system.multipliers(form::at));
        var worth = BasisSystem.combined(model, multipliers);
        var own = form.whole().denominator();
        var factor = own.divide(own.gcd(worth.denominator()));
        var common = worth.denominator().multiply(factor);
        var cells = new BigInteger[nonbasic.length];
        for (int place = 0; place < nonbasic.length; place++) {
            int variable = nonbasic[place];
            cells[place] = variable < columnCount
                    ? Integers.times(form.at(variable), common)
                            .subtract(worth.sums().get(variable).multiply(factor))
                    : Integers.times(slackPrice(multipliers, variable - columnCount), common);
        }
        return new Cells(cells, common);
    }

    /** What one unit of a row's slack costs: slacks of ceilings count downwards. */
    private BigFraction slackPrice(List<BigFraction> multipliers, int row) {
        var multiplier = multipliers.get(row);
        return isMost(model.rows().get(row)) ? multiplier.negate() : multiplier;
    }

    @Override
    public Cells column(int place) {
        var known = columns.get(place);
        if (known == null) {
            known = solvedColumn(place);
            columns.put(place, known);
        }
        return known;
    }

    private Cells solvedColumn(int place) {
        int variable = nonbasic[place];
        if (variable >= columnCount) {
            var unit = isMost(row(variable)) ? BigFraction.ONE.negate() : BigFraction.ONE;
            return byLine(amounts(only(variable - columnCount, unit)), row -> ZERO);
        }
        var change = new ArrayList<>(
                amounts(i -> model.rows().get(i).form().at(variable).negate()));
        change.set(variable, BigFraction.ONE);
        return byLine(change, row -> ZERO);
    }

    private static IntFunction<BigFraction> only(int row, BigFraction value) {
        return i -> i == row ? value : ZERO;
    }

    private List<BigFraction> amounts(IntFunction<BigFraction> right) {
        return solved(system.amounts(right));
    }

    private static List<BigFraction> solved(Optional<List<BigFraction>> found) {
        return found.orElseThrow(Lost::new);
    }

    /** Amounts of the columns, and what they leave to spare in each row where the right sides are so much, by line. */
    private Cells byLine(List<BigFraction> amounts, IntFunction<BigFraction> right) {
        var cells = new ArrayList<BigFraction>();
        var whole = WholePoint.of(amounts);
        for (int variable : basic) {
            if (variable < columnCount) {
                cells.add(amounts.get(variable));
            } else {
                var over = whole.dot(row(variable).form()).subtract(right.apply(variable - columnCount));
                cells.add(isMost(row(variable)) ? over.negate() : over);
            }
        }
        return Cells.of(cells);
    }

    @Override
    public Cells constants() {
        if (constants == null) {
            constants = byLine(point(), i -> model.rows().get(i).right());
        }
        return constants;
    }

    @Override
    public List<BigFraction> point() {
        if (point == null) {
            point = amounts(i -> model.rows().get(i).right());
        }
        return point;
    }

    @Override
    public Cells parameters() {
        if (parameters == null) {
            parameters = byLine(shift(), moved());
        }
        return parameters;
    }

    /** How the columns change with the parameter. */
    private List<BigFraction> shift() {
        if (shift == null) {
            shift = amounts(moved());
        }
        return shift;
    }

    /** How the right sides change with the parameter. */
    private IntFunction<BigFraction> moved() {
        if (movedRow < 0) {
            return i -> ZERO;
        }
        boolean falls = isMost(model.rows().get(movedRow)) == movedSign > 0;
        return only(movedRow, falls ? BigFraction.ONE.negate() : BigFraction.ONE);
    }

    @Override
    public Cells prices() {
        if (prices == null) {
            prices = over(model.costs());
        }
        return prices;
    }

    @Override
    public Cells directions() {
        if (directions == null) {
            directions = over(direction);
        }
        return directions;
    }

    @Override
    public BigFraction parameterOfCost() {
        return model.costs().dot(shift());
    }

    @Override
    public BigFraction directionNow() {
        return direction.dot(point());
    }

    @Override
    public BigFraction parameterOfDirection() {
        return direction.dot(shift());
    }

    @Override
    public BigFraction slackScale(int row) {
        return BigFraction.ONE;
    }

    @Override
    public void pivot(int line, int place) {
        int leaving = basic[line];
        basic[line] = nonbasic[place];
        nonbasic[place] = leaving;
        system = BasisSystem.of(model, basis()).orElseThrow(Lost::new);
        constants = null;
        prices = null;
        point = null;
        forgetParameter();
        directions = null;
        lines.clear();
        columns.clear();
    }

    private void forgetParameter() {
        parameters = null;
        shift = null;
    }

    @Override
    public void moveSlack(int row, int sign) {
        movedRow = row;
        movedSign = sign;
        forgetParameter();
    }

    @Override
    public void setDirection(LinearForm weights) {
        direction = weights;
        directions = null;
    }

    /** The constant that a row's right side would add is left out: only changes of the second objective matter. */
    @Override
    public void setDirectionToVariable(int variable) {
        if (variable < columnCount) {
            setDirection(LinearForm.of(variable, BigFraction.ONE.negate()));
        } else {
            var form = row(variable).form();
            setDirection(isMost(row(variable)) ? form : form.negated());
        }
    }

    @Override
    public List<BigFraction> slackPrices(List<BigFraction> costs) {
        var multipliers = solved(system.multipliers(costs::get));
        var prices = new ArrayList<BigFraction>();
        for (int i = 0; i < multipliers.size(); i++) {
            prices.add(slackPrice(multipliers, i));
        }
        return prices;
    }
}
