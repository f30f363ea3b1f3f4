package panade.scenario;

import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import panade.certify.Certifier;
import panade.certify.Verdict;
import panade.model.LinearModel;
import panade.solver.SolverAnswer;
import panade.solver.ortools.OrToolsSolver;
import panade.solver.ortools.WarmGlop;

/** One solve from nothing as blends grow: the bare solver, ours, ours with its proof, and the proof alone. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3)
@Measurement(iterations = 5)
public class GrowthBenchmark {
    @Param({"40x20", "500x60", "2000x100", "5000x200"})
    String model;

    private LinearModel linear;
    private double[] costs;
    private SolverAnswer answer;

    @Setup
    public void make() {
        linear = MadeModel.linear(model);
        costs = linear.columns().stream()
                .mapToDouble(column -> column.cost().doubleValue())
                .toArray();
        answer = new OrToolsSolver().solve(linear, Duration.ofMinutes(1));
    }

    @Benchmark
    public double bare() {
        try (var glop = new WarmGlop(linear)) {
            return glop.leastCost(costs);
        }
    }

    @Benchmark
    public SolverAnswer ours() {
        return new OrToolsSolver().solve(linear, Duration.ofMinutes(1));
    }

    @Benchmark
    public Verdict oursWithProof() {
        return Certifier.certify(linear, ours(), "GLOP");
    }

    @Benchmark
    public Verdict proof() {
        return Certifier.certify(linear, answer, "GLOP");
    }
}
