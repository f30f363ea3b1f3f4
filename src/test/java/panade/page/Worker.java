package panade.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.time.Duration;
import java.util.Objects;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.WebDriverWait;
import panade.page.Browser.View;

/** Somebody who works on the page of {@code panade open} in a browser. */
record Worker(Browser browser) {
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    void visit(URI address) {
        browser.visit(address, View.DESK);
    }

    /** Types into a field in place of what is there, and waits for the answer. */
    void type(String field, String text) {
        var input = field(field);
        input.sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE, text, Keys.ENTER);
        waitForAnswer();
    }

    WebElement field(String name) {
        return browser.driver().findElement(By.name(name));
    }

    /** What stands in a field. */
    String typed(String name) {
        return Objects.requireNonNull(field(name).getDomProperty("value"));
    }

    /** Presses what a selector finds, and waits for the answer. */
    void press(String selector) {
        var button = browser.driver().findElement(By.cssSelector(selector));
        browser.run("arguments[0].scrollIntoView({block: 'center'})", button);
        button.click();
        waitForAnswer();
    }

    /** Presses keys with whatever has the focus, and waits for the answer. */
    void keys(CharSequence... keys) {
        browser.driver().switchTo().activeElement().sendKeys(keys);
        waitForAnswer();
    }

    /** Saves under a name, and waits until something is said of it. */
    void save(String name) {
        var input = browser.driver().findElement(By.id("save-as"));
        input.sendKeys(Keys.chord(Keys.CONTROL, "a"), name, Keys.ENTER);
        waitForWords();
    }

    /** Waits until something is said of a file. */
    void waitForWords() {
        new WebDriverWait(browser.driver(), PATIENCE)
                .until(driver -> !browser.text("#saved").isEmpty());
    }

    void waitForAnswer() {
        new WebDriverWait(browser.driver(), PATIENCE)
                .until(driver -> driver.findElement(By.tagName("main")).getDomAttribute("aria-busy") == null);
    }

    String figure() {
        return browser.text("#answer .figure");
    }

    String said() {
        return browser.text("#said");
    }

    /** The name of the field of a bound's number, found by what the page calls it. */
    String fieldOf(String label) {
        var name = browser.run(
                "return [...document.querySelectorAll('main input')].find(i => i.getAttribute('aria-label') === arguments[0])?.name",
                label);
        assertThat(name).as("a field for %s", label).isNotEqualTo("");
        return (String) name;
    }

    String fault(String field) {
        return Objects.requireNonNull(
                browser.driver().findElement(By.id(field + "-fault")).getDomProperty("textContent"));
    }

    boolean isStale() {
        return browser.driver().findElements(By.cssSelector("main.stale")).size() == 1;
    }
}
