package panade.report;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.quantity.Fractions;

/** Draws a curve of points joined by straight lines as plain text. */
public final class Chart {
    private static final int WIDTH = 72;
    private static final int HEIGHT = 14;

    private final List<BigFraction> across;
    private final List<BigFraction> up;
    private final BigFraction left;
    private final BigFraction right;
    private final BigFraction bottom;
    private final BigFraction top;

    /** A chart of at least two points in rising order of {@code across}. */
    public Chart(List<BigFraction> across, List<BigFraction> up) {
        this.across = across;
        this.up = up;
        this.left = across.get(0);
        this.right = across.get(across.size() - 1);
        this.bottom = up.stream().reduce(up.get(0), Fractions::min);
        this.top = up.stream().reduce(up.get(0), Fractions::max);
    }

    /** The lines of the chart: the curve, its breakpoints as {@code o}, and the values at the corners. */
    public List<String> lines() {
        var grid = new char[HEIGHT][WIDTH];
        for (var row : grid) {
            Arrays.fill(row, ' ');
        }
        for (int column = 0; column < WIDTH; column++) {
            grid[row(valueAt(column))][column] = '.';
        }
        for (int i = 0; i < across.size(); i++) {
            grid[row(up.get(i))][column(across.get(i))] = 'o';
        }
        var lines = new ArrayList<String>();
        for (int row = 0; row < HEIGHT; row++) {
            var label = row == 0 ? Figures.money(top) : row == HEIGHT - 1 ? Figures.money(bottom) : "";
            lines.add(" ".repeat(10 - label.length()) + label + " |" + new String(grid[row]).stripTrailing());
        }
        lines.add(" ".repeat(11) + "+" + "-".repeat(WIDTH));
        lines.add(scale());
        return lines;
    }

    private String scale() {
        var first = Figures.significant(left, 5);
        var last = Figures.significant(right, 5);
        return " ".repeat(12) + first + " ".repeat(Math.max(1, WIDTH - first.length() - last.length())) + last;
    }

    private BigFraction valueAt(int column) {
        var x = left.add(right.subtract(left).multiply(column).divide(WIDTH - 1));
        int i = 1;
        while (i < across.size() - 1 && x.compareTo(across.get(i)) > 0) {
            i++;
        }
        var span = across.get(i).subtract(across.get(i - 1));
        if (span.signum() == 0) {
            // a jump at the very left
            return up.get(i);
        }
        var part = x.subtract(across.get(i - 1)).divide(span);
        return up.get(i - 1).add(up.get(i).subtract(up.get(i - 1)).multiply(part));
    }

    private int column(BigFraction x) {
        return place(x.subtract(left), right.subtract(left), WIDTH);
    }

    private int row(BigFraction y) {
        return HEIGHT - 1 - place(y.subtract(bottom), top.subtract(bottom), HEIGHT);
    }

    private static int place(BigFraction distance, BigFraction whole, int cells) {
        if (whole.signum() == 0) {
            return 0;
        }
        return distance.multiply(cells - 1)
                .divide(whole)
                .bigDecimalValue(0, RoundingMode.HALF_EVEN)
                .intValueExact();
    }
}
