package leat.examples;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.json.Json;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** Chromium without a window and without a memory: each has a fresh profile. */
final class Browser implements AutoCloseable {

    /** Content setting of Chromium: blocked. */
    private static final int BLOCKED = 2;

    private final ChromeDriver driver;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    static Browser open() {
        return open(Map.of());
    }

    static Browser withoutScripts() {
        return open(Map.of("profile.managed_default_content_settings.javascript", BLOCKED));
    }

    private static Browser open(Map<String, Object> preferences) {
        ChromeOptions options = new ChromeOptions();
        options.setBinary(onPath("chromium").toString());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-dev-shm-usage",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--no-first-run",
                // Or else a click would hit what glides past.
                "--force-prefers-reduced-motion",
                "--window-size=1400,1000",
                "--user-data-dir=" + freshFolder().toAbsolutePath());
        options.setExperimentalOption("prefs", preferences);
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        // Named, or else Selenium would look for a driver on the net.
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(onPath("chromedriver").toFile())
                .build();
        return new Browser(new ChromeDriver(service, options));
    }

    private static Path onPath(String program) {
        return Arrays.stream(System.getenv("PATH").split(":"))
                .map(folder -> Path.of(folder, program))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(program + " is not on the path; the browser test needs it"
                        + " (Debian's packages chromium and chromium-driver)"));
    }

    private static Path freshFolder() {
        try {
            return Files.createTempDirectory(Files.createDirectories(Path.of("target", "browser")), "profile");
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Source of the accessibility checker, fetched by {@code npm ci} in the folder browser. */
    static String axe() {
        Path file = Example.folder().resolve("browser/node_modules/axe-core/axe.min.js");
        assertTrue(Files.isRegularFile(file), file + " is not there; run npm ci in examples/browser");
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    ChromeDriver driver() {
        return driver;
    }

    /** What the browser complained about. */
    List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::toString)
                .toList();
    }

    /** Addresses of everything that was asked for since the last call, but for what the browser wants for its own first page. */
    List<String> requests() {
        List<String> addresses = new ArrayList<>();
        for (LogEntry entry : driver.manage().logs().get(LogType.PERFORMANCE)) {
            Map<String, Object> event = inner(new Json().toType(entry.getMessage(), Json.MAP_TYPE), "message");
            if ("Network.requestWillBeSent".equals(event.get("method"))) {
                String address =
                        String.valueOf(inner(inner(event, "params"), "request").get("url"));
                if (!address.startsWith("chrome:")) { // which no page of ours can ask for
                    addresses.add(address);
                }
            }
        }
        return addresses;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> inner(Map<String, Object> map, String name) {
        return (Map<String, Object>) map.getOrDefault(name, Map.of());
    }

    /** Shows pages as on a screen so wide, in CSS pixels. */
    void narrow(int width) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", 844, "deviceScaleFactor", 2, "mobile", true));
    }

    @Override
    public void close() {
        driver.quit();
    }
}
