package panade.scenario;

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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;
import panade.solver.ortools.WarmGlop;

/** Draws answered a second: on the graph of bases, and by GLOP solving again from its last basis. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx512m")
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 3, time = 3)
public class DrawBenchmark {
    @Param({"demo", "120x30"})
    String model;

    @Param({"10", "30"})
    int percent;

    private ScenarioModel scenarios;
    private Geometry geometry;
    private BasisGraph graph;

    @Setup
    public void read() {
        scenarios = MadeModel.named(model, percent);
        geometry = new Geometry(scenarios.model());
        graph = new BasisGraph(geometry);
    }

    /** One thread's tools; every thread draws other draws. */
    @State(Scope.Thread)
    public static class Worker {
        private static final long FAR = 1L << 32;

        private Walker walker;
        private Drawn drawn;
        private long next;

        @Setup
        public void make(DrawBenchmark benchmark) {
            var start = benchmark
                    .graph
                    .vertex(benchmark.geometry.variables(benchmark.scenarios.optimum()))
                    .orElseThrow();
            walker = new Walker(benchmark.geometry, benchmark.graph, start);
            drawn = new Drawn(benchmark.scenarios);
            next = Thread.currentThread().getId() * FAR;
        }

        double answer() {
            drawn.draw(next++);
            return walker.best(drawn.costs()).orElseThrow().cost(drawn.costs());
        }
    }

    /** The solver's side of the comparison. */
    @State(Scope.Thread)
    public static class Solver {
        private WarmGlop glop;
        private Drawn drawn;
        private long next;

        @Setup
        public void make(DrawBenchmark benchmark) {
            glop = new WarmGlop(benchmark.scenarios.model());
            drawn = new Drawn(benchmark.scenarios);
        }

        double answer() {
            drawn.draw(next++);
            return glop.leastCost(drawn.costs());
        }

        @TearDown
        public void close() {
            glop.close();
        }
    }

    @Benchmark
    public double graph(Worker worker) {
        return worker.answer();
    }

    @Benchmark
    @Threads(2)
    public double graphByTwo(Worker worker) {
        return worker.answer();
    }

    @Benchmark
    public double solver(Solver solver) {
        return solver.answer();
    }
}
