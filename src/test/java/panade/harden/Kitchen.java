package panade.harden;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import panade.testing.CommandRun;
import panade.testing.TemporaryFolders;

/**
 * Documents that belong together, and the commands that read them.
 *
 * @param files contents by path
 * @param commands words of command lines; a path is written {@code @path}
 */
record Kitchen(String name, Map<String, byte[]> files, List<String> commands) {
    private static final Path RESOURCES = Path.of("src", "test", "resources");

    /** What only reads; the same for all kitchens with one brief. */
    private static final List<String> OF_A_BRIEF = List.of(
            "check @B",
            "check --strict --json @B",
            "blend @B",
            "blend @B --json --ladder",
            "batch @B --weighing 1g --batch 3kg",
            "panel @B --format eu --weighed",
            "panel @B --json --tail 2%",
            "reach @B --target 1.10/lb",
            "quotes @B --suppliers",
            "study @B --draws 40 --compositions 3 --threads 1",
            "buy @B=7kg --seconds 1",
            "export @B --mps",
            "export @B --lp");

    static List<Kitchen> corpus() {
        var all = new ArrayList<Kitchen>();
        all.add(hut());
        all.add(book());
        all.add(demo());
        for (var name : List.of("empty-stage", "equalities", "lists", "odd-prices", "rules", "two-offers", "units")) {
            all.add(of(RESOURCES.resolve("tricky").resolve(name), "constraints/brief.json", List.of()));
        }
        all.add(of(RESOURCES.resolve("hostile"), "brief.json", List.of()));
        all.add(of(RESOURCES.resolve("documents").resolve("base"), "constraints/brief.json", List.of()));
        return all;
    }

    /** Small, with a little of everything that documents may say. */
    static Kitchen hut() {
        var hut = of(
                RESOURCES.resolve("harden").resolve("kitchen"),
                "brief.json",
                List.of(
                        "check @rules.json @printed.json @short.json @suppliers.csv @prices.csv",
                        "blend @rules.json --json",
                        "blend @rules.json",
                        "blend @printed.json",
                        "blend @short.json --conflicts 3",
                        "swap @brief.json --out pea",
                        "swap @rules.json --out oil",
                        "trace @brief.json --price pea",
                        "trace @brief.json --bound fat --side min --csv",
                        "quotes @brief.json --prices @prices.csv --prices @winter.csv",
                        "report @brief.json --no-curves -o @out.html",
                        "buy @brief.json=10kg --stock @stock.csv --periods @periods.json --seconds 1",
                        "buy @rules.json=9kg --stock @stock.csv --json --seconds 1",
                        "made @made.json",
                        "made @made.csv --brief @brief.json --json",
                        "nudge @made.json --changes 1",
                        "fit @trials.json",
                        "fit @trials.json --at @made.json --json",
                        "fit @trials.json --at @made.json --sure 95%",
                        "import @quote.csv --into @. --supplier North --per kg --dry-run",
                        "import @foods.csv --into @. --dry-run",
                        "import @foods.csv --into @. --update --json --dry-run",
                        "import @foods.json --into @. --dry-run"));
        read(RESOURCES.resolve("intake")).forEach(hut.files()::putIfAbsent);
        return hut;
    }

    /** The same kitchen as one workbook. */
    private static Kitchen book() {
        var folder = TemporaryFolders.create("panade-book");
        var file = folder.resolve("kitchen.xlsx");
        var brief = RESOURCES.resolve("harden").resolve("kitchen").resolve("brief.json");
        var run = CommandRun.of("export", brief.toString(), "--xlsx", file.toString());
        if (run.status() != 0) {
            throw new IllegalStateException(run.messages());
        }
        return of(
                folder,
                "kitchen.xlsx",
                List.of("import @kitchen.xlsx --into @set --dry-run", "check @kitchen.xlsx", "blend @kitchen.xlsx"));
    }

    /** The demo. Its longer commands are left out: they are the same code on more rows. */
    private static Kitchen demo() {
        var files = new LinkedHashMap<String, byte[]>();
        for (var folder : List.of("constraints", "ingredient-sets")) {
            read(Path.of(folder)).forEach((path, content) -> files.put(folder + "/" + path, content));
        }
        return new Kitchen(
                "demo",
                files,
                List.of(
                        "check @constraints/dumpling-filling.json @constraints/taco-crumble.json",
                        "check @constraints/skewer-mince-tidy.json @constraints/dumpling-filling-printed.json",
                        "blend @constraints/dumpling-filling.json",
                        "blend @constraints/taco-crumble.json --json",
                        "made @constraints/dumpling-filling-made.json",
                        "panel @constraints/skewer-mince.json",
                        "fit @ingredient-sets/netherpleat/trials-dumpling-filling.json",
                        "import @ingredient-sets/netherpleat/quote-gullbeck-october.csv"
                                + " --into @ingredient-sets/netherpleat --supplier Gullbeck --dry-run"));
    }

    private static Kitchen of(Path folder, String brief, List<String> more) {
        var commands = Stream.concat(OF_A_BRIEF.stream().map(each -> each.replace("@B", "@" + brief)), more.stream());
        return new Kitchen(folder.getFileName().toString(), read(folder), commands.toList());
    }

    private static Map<String, byte[]> read(Path folder) {
        var files = new LinkedHashMap<String, byte[]>();
        try (var paths = Files.walk(folder)) {
            for (var path : paths.filter(Files::isRegularFile).sorted().toList()) {
                files.put(folder.relativize(path).toString().replace('\\', '/'), Files.readAllBytes(path));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return files;
    }

    /** The documents of a command line that can be checked, which is quick: reading is where damage does most harm. */
    String checked(String command) {
        return named(command).stream()
                .filter(file -> !command.startsWith("import ") && !file.matches(".*(made|trials|periods|stock).*"))
                .map(file -> "@" + file)
                .collect(Collectors.joining(" "));
    }

    /** The files that a command line names come first among those to be damaged; none for a kitchen without. */
    List<String> named(String command) {
        return Stream.of(command.split(" "))
                .filter(word -> word.startsWith("@"))
                .map(word -> word.substring(1).replaceAll("=.*", ""))
                .filter(files::containsKey)
                .toList();
    }
}
