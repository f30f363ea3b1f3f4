package panade.page;

import java.util.List;

/**
 * What the page shows, worded; the template only lays it out.
 *
 * @param title the product's name
 * @param facts what the page was made from, each a short line
 * @param headline what came of the brief
 * @param sections in reading order
 * @param inline style and scripts
 */
public record PageView(String title, List<String> facts, Headline headline, List<Section> sections, Inline inline) {
    public PageView {
        facts = List.copyOf(facts);
        sections = List.copyOf(sections);
    }

    /**
     * The answer in a line.
     *
     * @param made whether there is a blend
     * @param figure what is read first
     * @param sentences what is read next
     */
    public record Headline(boolean made, String figure, List<String> sentences) {}

    /**
     * A part of the page.
     *
     * @param id where links point to
     */
    public record Section(String id, String title, Content content) {}
}
