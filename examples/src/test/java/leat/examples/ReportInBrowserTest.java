package leat.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import leat.report.Report;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;

/** The reports of the examples in a browser. Runs with {@code -Pbrowser}. */
@Tag("browser")
class ReportInBrowserTest {

    private static final int PHONE_PX = 390;
    private static final SortedMap<String, URI> PAGES = new TreeMap<>();
    private static Browser browser;

    @BeforeAll
    static void write() throws IOException {
        for (String script : List.of("tern-hill/tern-hill.js", "mill-croft/mill-croft.js")) {
            SortedMap<String, byte[]> files = Report.files(Example.run(script).assessment());
            Path folder = Files.createDirectories(
                    Path.of("target", "browser").resolve(script).getParent());
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Files.write(folder.resolve(file.getKey()), file.getValue());
            }
            PAGES.put(script, folder.resolve("report.html").toAbsolutePath().toUri());
        }
        browser = Browser.open();
    }

    @AfterAll
    static void close() {
        browser.close();
    }

    static Stream<URI> pages() {
        return PAGES.values().stream();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void nothingIsComplainedOfAndNothingFetched(URI page) {
        browser.requests();
        browser.driver().get(page.toString());
        assertEquals(List.of(), browser.complaints());
        assertEquals(List.of(page.toString()), browser.requests());
    }

    @ParameterizedTest
    @MethodSource("pages")
    void eachSwitchTurnsItsLayerOffAndOnAgain(URI page) {
        browser.driver().get(page.toString());
        switchAll(browser.driver());
    }

    private static void switchAll(ChromeDriver driver) {
        List<WebElement> switches = driver.findElements(By.cssSelector(".sheet > input[id*='-show-']"));
        assertTrue(switches.size() > 10, "only " + switches.size() + " switches");
        for (WebElement input : switches) {
            String id = input.getDomAttribute("id");
            WebElement label = driver.findElement(By.cssSelector("label[for='" + id + "']"));
            WebElement layer = driver.findElement(By.id(id.replace("-show-", "-layer-")));
            assertTrue(input.isSelected(), id);
            assertEquals("inline", layer.getCssValue("display"), id);
            label.click();
            assertEquals("none", layer.getCssValue("display"), id);
            label.click();
            assertEquals("inline", layer.getCssValue("display"), id);
        }
    }

    @ParameterizedTest
    @MethodSource("pages")
    void allCanBeReadAndSwitchedWithoutScripts(URI page) {
        browser.driver().get(page.toString());
        String withScripts = browser.driver().findElement(By.tagName("main")).getText();
        try (Browser plain = Browser.withoutScripts()) {
            plain.driver().get("data:text/html,<title>off</title><script>document.title='on'</script>");
            assertEquals("off", plain.driver().getTitle(), "scripts are not blocked");
            plain.driver().get(page.toString());
            WebElement main = plain.driver().findElement(By.tagName("main"));
            assertEquals(withScripts, main.getText());
            for (String id : List.of("summary", "heads", "pipes", "findings", "cautions")) {
                assertTrue(plain.driver().findElement(By.id(id)).isDisplayed(), id);
            }
            switchAll(plain.driver());
        }
    }

    /** Source of the checks: WCAG 2.1, levels A and AA, and the checker's own list of good practice. */
    @ParameterizedTest
    @MethodSource("pages")
    void theCheckerFindsNoBarrier(URI page) {
        browser.driver().get(page.toString());
        assertEquals(List.of(), barriers(browser.driver()));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void onAPhoneNothingRunsOutOfThePage(URI page) {
        try (Browser phone = Browser.open()) {
            phone.narrow(PHONE_PX);
            phone.driver().get(page.toString());
            long widthPx = (Long) phone.driver().executeScript("return document.documentElement.scrollWidth");
            assertEquals(PHONE_PX, widthPx);
            @SuppressWarnings("unchecked")
            List<String> wide = (List<String>) phone.driver()
                    .executeScript(
                            "return [...document.querySelectorAll('h1,h2,h3,p,li,dt,dd,label')]"
                                    + ".filter(e => e.getBoundingClientRect().right > arguments[0])"
                                    + ".map(e => e.textContent)",
                            PHONE_PX);
            assertEquals(List.of(), wide);
            assertEquals(List.of(), barriers(phone.driver()));
        }
    }

    /** The test itself would notice. */
    @Test
    void faultsThatWerePlantedAreFound() {
        browser.requests();
        browser.driver()
                .get("data:text/html,<html><body><p style='color:%23aaa'>pale</p><img src='http://leat.invalid/a.png'>"
                        + "<script>throw new Error('planted')</script></body></html>");
        assertTrue(browser.requests().contains("http://leat.invalid/a.png"));
        assertTrue(browser.complaints().stream().anyMatch(one -> one.contains("planted")));
        List<String> found = barriers(browser.driver());
        for (String rule : List.of("color-contrast", "image-alt", "document-title", "html-has-lang")) {
            assertTrue(found.stream().anyMatch(one -> one.startsWith(rule + ":")), rule + " in " + found);
        }
    }

    private static List<String> barriers(ChromeDriver driver) {
        driver.executeScript(Browser.axe());
        Object found = driver.executeAsyncScript("""
                const done = arguments[0];
                axe.run({runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'best-practice']}).then(
                  results => done(results.violations.flatMap(
                    one => one.nodes.map(node => one.id + ': ' + node.target + ' ' + node.failureSummary))),
                  fault => done(['axe failed: ' + fault]));
                """);
        @SuppressWarnings("unchecked")
        List<String> barriers = (List<String>) found;
        return barriers;
    }
}
