package panade.document.trial;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import panade.document.syntax.Expect;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.NumberNode;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.domain.Stage;

/** Takes what a command once printed with {@code --json} as a formula: its blend, or its bench sheet. */
public final class ResultFormula {
    private static final String EXPECTED = "a line of a result, such as {\"ingredient\": \"salt\", \"grams\": 45}";

    private final Expect expect;
    private final StagedWeights weights = new StagedWeights();

    private ResultFormula(Problems problems) {
        this.expect = new Expect(problems);
    }

    /** Whether a document is a result that holds a blend. */
    public static boolean is(ObjectNode root) {
        return root.field("made").isEmpty() && lines(root).isPresent();
    }

    /** The blend of a result as the document of a formula. */
    public static ObjectNode of(ObjectNode root, Problems problems) {
        var result = new ResultFormula(problems);
        lines(root).orElseThrow().items().forEach(result::add);
        return result.weights.formula(root.origin());
    }

    private static Optional<ArrayNode> lines(ObjectNode root) {
        return List.of("blend", "lines").stream()
                .flatMap(name -> root.field(name).stream())
                .map(Field::value)
                .filter(ArrayNode.class::isInstance)
                .map(ArrayNode.class::cast)
                .findFirst();
    }

    private void add(Node item) {
        expect.object(item, EXPECTED).ifPresent(line -> {
            var ingredient = text(line, "ingredient");
            var grams = line.field("grams").map(Field::value).filter(NumberNode.class::isInstance);
            if (ingredient == null || grams.isEmpty()) {
                expect.refuse(line, EXPECTED);
                return;
            }
            var stage = text(line, "stage");
            var supplier = text(line, "supplier");
            weights.add(
                    stage == null ? Stage.MIX : stage.text(),
                    stage == null ? line.origin() : stage.origin(),
                    new Field(ingredient.text(), ingredient.origin(), weight((NumberNode) grams.get())),
                    supplier == null || supplier.text().isEmpty() ? null : supplier);
        });
    }

    private static TextNode weight(NumberNode grams) {
        return new TextNode(grams.origin(), grams.spelling() + " g");
    }

    private static @Nullable TextNode text(ObjectNode line, String name) {
        return line.field(name)
                .map(Field::value)
                .filter(TextNode.class::isInstance)
                .map(TextNode.class::cast)
                .orElse(null);
    }
}
